package org.thresholdregister.letters;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.wording.Language;
import org.thresholdregister.core.wording.LetterKind;
import org.thresholdregister.letters.LetterComposer.Circumstances;
import org.thresholdregister.letters.LetterComposer.Texts;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.pdf.PdfRenderer;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.review.WorkerRecord;

/** The texts of a site's letters; they hold no health data. */
@Service
@Transactional
public class LetterTextService {

    private static final String WHO_MAY_WRITE = Roles.HAS_NURSE + " or " + Roles.HAS_ADMINISTRATOR;

    private final LetterTexts texts;
    private final PdfRenderer renderer;
    private final EntityManager entityManager;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final Clock clock;
    private final InstantSource systemTime = InstantSource.system();

    LetterTextService(
            LetterTexts texts,
            PdfRenderer renderer,
            EntityManager entityManager,
            AuditTrail auditTrail,
            CurrentUser currentUser,
            Clock clock) {
        this.texts = texts;
        this.renderer = renderer;
        this.entityManager = entityManager;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    /** The sites whose texts the user may write, in order; an empty name stands for workers without a site. */
    @PreAuthorize(WHO_MAY_WRITE)
    @Transactional(readOnly = true)
    public List<String> sites() {
        return ListQuery.of(entityManager, "Worker w", "w.site", currentUser.scope())
                .all("distinct w.site", "order by w.site", tuple -> tuple.get(0, String.class));
    }

    @PreAuthorize(WHO_MAY_WRITE)
    @Transactional(readOnly = true)
    public TextInForce text(String site, Language language, TextPart part) {
        checkScope(site);
        return new TextInForce(texts.inForce(site, language, part), texts.versions(site, language, part));
    }

    /** Saves a text as the site's own; returns what stands against it, and where that is nothing it holds from now on. */
    @PreAuthorize(WHO_MAY_WRITE)
    public List<String> save(String site, Language language, TextPart part, String content) {
        checkScope(site);
        List<String> problems = new LetterText(part, content).problems();
        if (problems.isEmpty()) {
            store(site, language, part, content.strip());
        }
        return problems;
    }

    /** What stands against a text, a sentence each; empty where it may be saved. */
    @PreAuthorize(WHO_MAY_WRITE)
    public List<String> problems(TextPart part, String content) {
        return new LetterText(part, content).problems();
    }

    /** Goes back to the text that comes with the program; what the site wrote is kept among the versions. */
    @PreAuthorize(WHO_MAY_WRITE)
    public void backToStandard(String site, Language language, TextPart part) {
        checkScope(site);
        store(site, language, part, "");
    }

    private void store(String site, Language language, TextPart part, String content) {
        texts.add(new StoredLetterText(site, language, part, content, currentUser.username(), systemTime.instant()));
        auditTrail.record(
                LetterAction.LETTER_TEXT_SAVED,
                "letter-text",
                part.word() + "/" + language.code(),
                (site.isEmpty() ? "without a site" : site) + (content.isEmpty() ? ", back to the standard text" : ""));
    }

    /**
     * A letter to an invented person with this text in it. A letterhead or a signature is shown on a result.
     *
     * @throws IllegalArgumentException where something stands against the text
     */
    @PreAuthorize(WHO_MAY_WRITE)
    @Transactional(readOnly = true)
    public byte[] preview(String site, Language language, TextPart part, String content) {
        checkScope(site);
        if (!new LetterText(part, content).problems().isEmpty()) {
            throw new IllegalArgumentException("a text that may not be saved is not shown either");
        }
        LetterKind kind = part.kind().orElse(LetterKind.RESULT);
        WorkerRecord example = ExampleRecord.of(site, LocalDate.now(clock), kind);
        var circumstances = new Circumstances(
                clock.instant(), clock.getZone(), currentUser.get().displayName(), Optional.empty(), List.of());
        return renderer.render(
                new LetterComposer(example, ExampleRecord.occasion(example, kind), language, circumstances)
                        .compose(new Texts(
                                chosen(site, language, TextPart.LETTERHEAD, part, content),
                                chosen(site, language, TextPart.of(kind), part, content),
                                chosen(site, language, TextPart.SIGNATURE, part, content))));
    }

    private String chosen(String site, Language language, TextPart wanted, TextPart written, String content) {
        return wanted == written ? content : texts.inForce(site, language, wanted);
    }

    private void checkScope(String site) {
        if (!currentUser.scope().includes(site.isEmpty() ? null : site)) {
            throw new AccessDeniedException("the texts of this site are not this user's to write");
        }
    }
}
