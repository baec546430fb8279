package org.thresholdregister.reports;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.summary.SummaryRow;
import org.thresholdregister.core.summary.YearSummary;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.review.DeterminationStore;
import org.thresholdregister.review.DeterminationStore.Stamp;

/**
 * Counts years, and remembers a year's counts for as long as nothing was judged anew: a large register takes seconds to
 * count. It hides nothing and checks no role: the service that calls it does.
 */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class CountedYears {

    /** More than the years and scopes that are looked at in a day. */
    private static final int MOST_REMEMBERED = 500;

    private record Key(SiteScope scope, int year) {}

    private record Counted(Stamp stamp, List<SummaryRow> rows) {}

    private final DeterminationStore determinations;
    private final Map<Key, Counted> remembered = new ConcurrentHashMap<>();

    CountedYears(DeterminationStore determinations) {
        this.determinations = determinations;
    }

    /** All counts of these years, year by year. */
    List<SummaryRow> rows(SiteScope scope, int firstYear, int lastYear) {
        // Read before the counts: what is stored in between only has them counted once more.
        Stamp stamp = determinations.stamp();
        List<SummaryRow> rows = new ArrayList<>();
        for (int year = firstYear; year <= lastYear; year++) {
            rows.addAll(rows(new Key(scope, year), stamp));
        }
        return rows;
    }

    private List<SummaryRow> rows(Key key, Stamp stamp) {
        Counted counted = remembered.get(key);
        if (counted != null && counted.stamp().equals(stamp)) {
            return counted.rows();
        }
        YearSummary summary = new YearSummary();
        determinations.forEachWorker(key.scope(), key.year(), summary::add);
        List<SummaryRow> rows = summary.rows();
        if (remembered.size() >= MOST_REMEMBERED) {
            remembered.clear();
        }
        remembered.put(key, new Counted(stamp, rows));
        return rows;
    }
}
