package org.thresholdregister.review.ui;

import com.vaadin.flow.router.NotFoundException;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import org.thresholdregister.platform.ui.FilterParameters;
import org.thresholdregister.review.BoardFilter;
import org.thresholdregister.review.BoardFilter.Postponed;
import org.thresholdregister.review.DueState;
import org.thresholdregister.review.TaskKind;

/** The filter of the board in the address. What was typed to search stays out of it, since it may be a name. */
final class BoardAddress {

    static final String ROUTE = "follow-ups";
    static final String KIND = "kind";
    static final String STATE = "state";
    static final String SITE = "site";
    static final String DEPARTMENT = "department";
    static final String FROM = "from";
    static final String TO = "to";
    static final String WHO = "who";
    static final String POSTPONED = "postponed";

    private BoardAddress() {}

    /**
     * @param duties the kinds of duties that the other features know of
     * @throws NotFoundException where a parameter means nothing
     */
    static BoardFilter filter(FilterParameters parameters, Set<String> duties, String text) {
        parameters.text(KIND).ifPresent(kind -> {
            if (task(kind).isEmpty() && !duties.contains(kind)) {
                throw new NotFoundException("no such kind");
            }
        });
        return new BoardFilter(
                parameters.text(KIND),
                parameters.choice(STATE, DueState.class),
                parameters.text(SITE),
                parameters.text(DEPARTMENT),
                parameters.day(FROM),
                parameters.day(TO),
                parameters.choice(WHO, TaskKind.Doer.class),
                parameters.choice(POSTPONED, Postponed.class),
                text);
    }

    /** The kind of task with this word; empty where it is a duty of another feature. */
    static Optional<TaskKind> task(String word) {
        return Arrays.stream(TaskKind.values())
                .filter(kind -> kind.word().equals(word))
                .findFirst();
    }

    static String of(Optional<String> kind, Optional<DueState> state) {
        return FilterParameters.NONE.with(KIND, kind).withChoice(STATE, state).pathOf(ROUTE);
    }
}
