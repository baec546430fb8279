package org.thresholdregister.review;

import java.util.List;
import java.util.function.Predicate;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;

/** How many shifts there are, each ear counted for itself, by what became of them. */
public record ShiftCounts(List<Group> groups) {

    /** The shifts of one outcome and one answer for the injury log. */
    public record Group(Outcome outcome, Recordability recordable, int shifts) {}

    public ShiftCounts {
        groups = List.copyOf(groups);
    }

    public int total() {
        return sum(group -> true);
    }

    public int of(Outcome outcome) {
        return sum(group -> group.outcome() == outcome);
    }

    public int of(Recordability recordable) {
        return sum(group -> group.recordable() == recordable);
    }

    private int sum(Predicate<Group> which) {
        return groups.stream().filter(which).mapToInt(Group::shifts).sum();
    }
}
