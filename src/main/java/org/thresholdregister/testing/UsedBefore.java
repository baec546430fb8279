package org.thresholdregister.testing;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.audiograms.TestStore;
import org.thresholdregister.audiograms.TestText;

/** What the site's tests of the last year name. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class UsedBefore implements SuggestionSource {

    private static final Period BACK = Period.ofYears(1);

    private final TestStore tests;

    UsedBefore(TestStore tests) {
        this.tests = tests;
    }

    @Override
    public Suggestions at(String site, LocalDate day) {
        return new Suggestions(
                named(TestText.TESTER, site, day),
                named(TestText.INSTRUMENT, site, day),
                named(TestText.TRANSDUCER, site, day),
                named(TestText.ROOM, site, day));
    }

    private List<String> named(TestText text, String site, LocalDate day) {
        return tests.named(text, site, day.minus(BACK));
    }
}
