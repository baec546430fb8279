package org.thresholdregister.protection;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A protector given to a worker.
 *
 * @param refitFor day of the test whose shift it answers, so that the case's refitting is entered with it
 */
public record NewIssue(long productKey, String size, LocalDate issuedOn, Optional<LocalDate> refitFor, String remark) {

    public static final int LONGEST_SIZE = 30;
    public static final int LONGEST_REMARK = 500;
}
