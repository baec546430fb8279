package org.thresholdregister.clinical.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import java.util.Optional;
import org.thresholdregister.clinical.ClinicalEntry;
import org.thresholdregister.clinical.ClinicalRecord;
import org.thresholdregister.clinical.ClinicalResult;
import org.thresholdregister.clinical.ClinicalService;
import org.thresholdregister.core.clinical.ClinicalFacts;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.review.ui.TestPagePart;

/**
 * History, ears and what was said, beside the test that is being typed. Each change is kept under the draft; it becomes an
 * entry of the test's day when the test is signed.
 */
@org.springframework.stereotype.Component
class ClinicalTestPart implements TestPagePart {

    private static final int PLACE = 50;

    private final ClinicalService clinical;
    private final CurrentUser currentUser;

    ClinicalTestPart(ClinicalService clinical, CurrentUser currentUser) {
        this.clinical = clinical;
        this.currentUser = currentUser;
    }

    @Override
    public int place() {
        return PLACE;
    }

    @Override
    public Optional<Component> of(String workerId, long draftKey) {
        return currentUser.role() == Role.NURSE
                ? clinical.of(workerId).map(record -> new Part(clinical, workerId, draftKey, record))
                : Optional.empty();
    }

    private static final class Part extends Section {
        private final transient ClinicalService clinical;
        private final String workerId;
        private final long draftKey;
        private final ClinicalFields fields = new ClinicalFields(this::keep);
        private final Paragraph state = new Paragraph();

        Part(ClinicalService clinical, String workerId, long draftKey, ClinicalRecord record) {
            this.clinical = clinical;
            this.workerId = workerId;
            this.draftKey = draftKey;
            state.getElement().setAttribute("role", "status");
            state.setText("Kept with the test as you type. Only nurses see it; nothing is required.");
            add(new H2("Health history and ears"), state);
            record.lastHistory().ifPresent(this::offer);
            var withoutTest = new Button("Keep without a test today", click -> keepWithoutTest(record));
            add(fields, withoutTest);
            clinical.draft(workerId, draftKey).ifPresent(fields::setValue);
        }

        /** One press takes the answers of last time over. */
        private void offer(ClinicalEntry last) {
            add(new Button("Same as on " + Words.day(last.day()), click -> {
                ClinicalFacts now = fields.value();
                ClinicalFacts before = last.facts().forConfirmation();
                fields.setValue(new ClinicalFacts(before.history(), now.ears(), now.postponed(), now.said()));
                keep();
            }));
        }

        private void keep() {
            answer(
                    clinical.keepDraft(workerId, draftKey, fields.value()),
                    "Kept. It becomes part of the record when the test is signed.");
        }

        /** Where the test is put off, what was seen is kept all the same. */
        private void keepWithoutTest(ClinicalRecord record) {
            String reason = record.on(record.asOf()).isPresent() ? "Taken down anew on the same day" : "";
            answer(
                    clinical.enter(workerId, record.asOf(), fields.value(), reason),
                    "On record as of " + Words.day(record.asOf()) + ", without a test.");
        }

        private void answer(ClinicalResult result, String kept) {
            switch (result) {
                case ClinicalResult.Kept() -> state.setText(kept);
                case ClinicalResult.Refused(var why) -> {
                    fields.complain(why);
                    state.setText(ClinicalReasons.inWords(why));
                }
            }
        }
    }
}
