package org.thresholdregister.review;

/** The words for the days that are left until something is due. */
public final class DaysLeft {

    private DaysLeft() {}

    /**
     * {@code 12 days left}, {@code due today}, {@code 5 days overdue}.
     *
     * @param days from today to the due date; negative once it is overdue
     */
    public static String inWords(long days) {
        if (days == 0) {
            return "due today";
        }
        return days > 0 ? count(days) + " left" : count(-days) + " overdue";
    }

    /** {@code 1 day}, {@code 12 days}. */
    public static String count(long days) {
        return days == 1 ? "1 day" : days + " days";
    }
}
