package org.thresholdregister.review.ui;

import com.vaadin.flow.function.SerializableConsumer;
import com.vaadin.flow.spring.annotation.SpringComponent;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Set;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.review.DecisionService;
import org.thresholdregister.review.FollowUpRow;

/** Answers follow-ups from a list, for the pages that show one. */
@SpringComponent
class FollowUpDesk {

    private final DecisionService decisions;
    private final CurrentUser currentUser;
    private final Clock clock;

    FollowUpDesk(DecisionService decisions, CurrentUser currentUser, Clock clock) {
        this.decisions = decisions;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    Set<DecisionKind> kindsToEnter() {
        return decisions.kindsToEnter();
    }

    /** Asks for what is to be entered; {@code done} is told in words what changed. */
    void answer(FollowUpRow row, SerializableConsumer<String> done) {
        FollowUpEntry.settling(row, decisions.kindsToEnter())
                .ifPresent(kind -> new EntryDialog(
                                row,
                                kind,
                                LocalDate.now(clock),
                                currentUser.get().displayName(),
                                decision -> decisions.enter(row.workerId(), decision),
                                done)
                        .open());
    }
}
