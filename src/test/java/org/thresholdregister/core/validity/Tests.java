package org.thresholdregister.core.validity;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.WorkerFacts;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.rules.QuietRule;
import org.thresholdregister.core.rules.RuleSets;

/** A worker's tests as the files write them, 500 to 8000 Hz, left ear and right ear, and the flags that they get. */
final class Tests {

    /** Both ears alike to within a step, no two neighbours the same, nothing to doubt. */
    static final String PLAIN = "10 5 10 15 20 15 10";

    private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

    private final List<Audiogram> audiograms = new ArrayList<>();
    private final Map<Audiogram, TestConditions> conditions = new HashMap<>();
    private final List<Decision> decisions = new ArrayList<>();
    private QuietRule quietTime = RuleSets.OSHA.quiet();
    private SameDayTests sameDay = SameDayTests.NONE;

    static Audiogram audiogram(String date, TestPurpose purpose, String left, String right) {
        var audiogram = new Audiogram.Builder(LocalDate.parse(date), purpose);
        set(audiogram, Ear.LEFT, left);
        set(audiogram, Ear.RIGHT, right);
        return audiogram.build();
    }

    private static void set(Audiogram.Builder audiogram, Ear ear, String cells) {
        String[] thresholds = cells.split(" ");
        for (Frequency frequency : Frequency.values()) {
            audiogram.set(ear, frequency, Vectors.threshold(thresholds[frequency.ordinal()]));
        }
    }

    /** Conditions with which no rule finds fault. */
    static TestConditions quiet() {
        return quiet("16", false);
    }

    static TestConditions quiet(String hours, boolean protectorsWorn) {
        return new TestConditions(
                Optional.of(new BigDecimal(hours)),
                Optional.of(protectorsWorn),
                Transducer.SUPRA_AURAL,
                PerEar.from(ear -> Threshold.notGiven()));
    }

    Tests add(String date, TestPurpose purpose, String left, String right) {
        return add(audiogram(date, purpose, left, right), quiet());
    }

    Tests add(Audiogram audiogram, TestConditions madeUnder) {
        audiograms.add(audiogram);
        conditions.put(audiogram, madeUnder);
        return this;
    }

    Tests baseline(String left, String right) {
        return add("2020-03-02", TestPurpose.BASELINE, left, right);
    }

    Tests annual(String date, String left, String right) {
        return add(date, TestPurpose.ANNUAL, left, right);
    }

    Tests decided(Decision decision) {
        decisions.add(decision);
        return this;
    }

    Tests by(QuietRule rule) {
        quietTime = rule;
        return this;
    }

    Tests testedWith(SameDayTests others) {
        sameDay = others;
        return this;
    }

    WorkerHistory history() {
        WorkerFacts worker =
                new WorkerFacts("V1", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
        return new WorkerHistory(worker, audiograms, decisions);
    }

    List<TestFlags> flagsOfAll() {
        WorkerHistory history = history();
        return new TestValidity(
                        history, Judge.judge(history, JudgingOptions.asOf(TODAY)), conditions::get, quietTime, sameDay)
                .ofAllTests();
    }

    /** The flags of the test that was added last. */
    List<ValidityFlag> flags() {
        return flagsOfAll().stream()
                .filter(flags -> flags.test().equals(audiograms.getLast()))
                .findFirst()
                .orElseThrow()
                .flags();
    }

    List<FlagKind> kinds() {
        return flags().stream().map(ValidityFlag::kind).toList();
    }

    <F extends ValidityFlag> List<F> flags(Class<F> type) {
        return flags().stream().filter(type::isInstance).map(type::cast).toList();
    }
}
