package org.thresholdregister.testdays;

/**
 * A test day with its numbers.
 *
 * @param people who hold a time, and those who did not come or refused
 * @param retests of them
 * @param proposed of them, who are not confirmed
 * @param leftOut due people who did not fit and are still not booked
 */
public record TestDayCounts(TestDay day, int people, int retests, int proposed, int leftOut) {

    public int freeTimes() {
        return Math.max(0, day.hours().slots().size() - people);
    }
}
