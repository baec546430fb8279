package org.thresholdregister.review;

import java.time.LocalDate;
import java.time.Period;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.meaning.referral.ReferralFinding;
import org.thresholdregister.core.population.AgeEdition;
import org.thresholdregister.core.population.ExposureLevel;
import org.thresholdregister.core.population.NoiseExposure;
import org.thresholdregister.core.population.Population;
import org.thresholdregister.core.population.PopulationComparison;
import org.thresholdregister.core.shift.ThresholdShift;
import org.thresholdregister.core.wording.MeaningChapter;
import org.thresholdregister.core.wording.Meanings;
import org.thresholdregister.core.wording.PopulationWords;
import org.thresholdregister.roster.WorkerDetails;

/** What a worker's latest judged test means beyond the shift. Makes its results when asked for them. */
public final class WhatItMeans {

    private static final double DAYS_OF_A_YEAR = 365.25;

    private final TestStory story;
    private final List<TestStory> stories;
    private final WorkerDetails worker;

    private WhatItMeans(TestStory story, List<TestStory> stories, WorkerDetails worker) {
        this.story = story;
        this.stories = stories;
        this.worker = worker;
    }

    /** Of the latest test that is judged on either ear; of nothing where there is none. */
    public static Optional<WhatItMeans> of(WorkerRecord record) {
        List<TestStory> stories = record.stories();
        return stories.reversed().stream()
                .filter(story -> !story.determinations().isEmpty())
                .findFirst()
                .map(story -> new WhatItMeans(story, stories, record.details()));
    }

    /** {@code Annual test of 3 Nov 2026}. */
    public String testName() {
        return story.name();
    }

    /** The test; an ear that is not judged on it counts as not tested. */
    public Audiogram test() {
        return judgedEars(story);
    }

    private static Audiogram judgedEars(TestStory story) {
        Audiogram test = story.audiogram();
        for (Ear ear : Ear.values()) {
            if (story.of(ear).isEmpty()) {
                for (Frequency frequency : Frequency.values()) {
                    test = test.with(ear, frequency, Threshold.notGiven());
                }
            }
        }
        return test;
    }

    /** Sentences on the ears that are left out. */
    public List<String> leftOut() {
        return Arrays.stream(Ear.values())
                .filter(ear -> story.of(ear).isEmpty())
                .map(Meanings::earLeftOut)
                .toList();
    }

    public List<MeaningChapter> chapters() {
        return Meanings.of(test(), referral());
    }

    private List<ReferralFinding> referral() {
        List<ReferralFinding> findings = new ArrayList<>();
        for (Ear ear : Ear.values()) {
            story.of(ear).ifPresent(determination -> findings.addAll(referral(determination)));
        }
        return findings;
    }

    private List<ReferralFinding> referral(Determination determination) {
        Ear ear = determination.ear();
        if (determination instanceof Determination.BaselineTest) {
            return ReferralFinding.atBaseline(test(), ear);
        }
        List<ReferralFinding> findings = new ArrayList<>();
        determination.shift().map(ThresholdShift::earlier).ifPresent(earlier -> {
            Audiogram baseline = judgedEars(earlier);
            findings.addAll(ReferralFinding.atBaseline(baseline, ear));
            findings.addAll(ReferralFinding.atLaterTest(baseline, test(), ear));
        });
        return findings;
    }

    private Audiogram judgedEars(Audiogram test) {
        return stories.stream()
                .filter(other -> other.audiogram().equals(test))
                .findFirst()
                .map(WhatItMeans::judgedEars)
                .orElse(test);
    }

    /** Beside people of this age and sex without noise, then with this noise; none where either is not on record. */
    public List<PopulationComparison> comparisons(AgeEdition edition) {
        Optional<Population> quiet =
                worker.sex().flatMap(sex -> age().map(age -> Population.withoutNoise(edition, sex, age)));
        List<PopulationComparison> comparisons = new ArrayList<>();
        quiet.ifPresent(population -> {
            comparisons.add(PopulationComparison.of(population, test()));
            exposure().ifPresent(noise -> comparisons.add(PopulationComparison.of(population.with(noise), test())));
        });
        return comparisons;
    }

    private Optional<Integer> age() {
        return worker.birthDate()
                .map(birth -> Period.between(birth, story.audiogram().date()).getYears());
    }

    /** The roster's level is a TWA of 5 dB exchange and goes into the model as such. */
    private Optional<NoiseExposure> exposure() {
        return worker.twaDba()
                .flatMap(level -> firstDay()
                        .map(first -> new NoiseExposure(
                                ExposureLevel.takingAsLex8h(level.doubleValue()),
                                ChronoUnit.DAYS.between(first, story.audiogram().date()) / DAYS_OF_A_YEAR)));
    }

    private Optional<LocalDate> firstDay() {
        return worker.enrolledFrom().or(worker::hireDate);
    }

    /** What has to be said of where the comparisons come from, or of why there is none. */
    public List<String> aboutComparisons() {
        Optional<Sex> sex = worker.sex();
        if (worker.birthDate().isEmpty() || sex.isEmpty()) {
            return List.of(PopulationWords.missing(worker.birthDate().isEmpty(), sex.isEmpty()));
        }
        if (worker.twaDba().isEmpty()) {
            return List.of(PopulationWords.noNoise(true));
        }
        return List.of(firstDay()
                .map(first -> PopulationWords.exposedSince(
                        first, worker.enrolledFrom().isPresent()))
                .orElseGet(() -> PopulationWords.noNoise(false)));
    }
}
