package org.thresholdregister.core.training;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.rules.Holidays;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.wording.TrainingWords;

/** When training is due, by 29 CFR 1910.95(k), 30 CFR 62.180 and 49 CFR 227.119. */
class TrainingRuleTest {

    private static final LocalDate ENROLLED = LocalDate.of(2025, 1, 15);
    private static final Set<TrainingTopic> ALL = EnumSet.allOf(TrainingTopic.class);

    private static TrainingRule rule(String word) {
        return TrainingRule.of(RuleSets.find(word).orElseThrow()).orElseThrow();
    }

    private static LocalDate due(String word, Training... trainings) {
        return rule(word).due(ENROLLED, List.of(trainings), Holidays.NONE);
    }

    private static Training on(String day, TrainingTopic... topics) {
        return new Training(LocalDate.parse(day), topics.length == 0 ? ALL : Set.of(topics));
    }

    @Test
    void whoeverWasNeverTrainedIsDueFromTheFirstDayOnByOshaAndALittleLaterByTheOthers() {
        assertThat(due("osha")).isEqualTo("2025-01-15");
        assertThat(due("msha")).as("30 days").isEqualTo("2025-02-14");
        assertThat(due("fra")).as("six months").isEqualTo("2025-07-15");
    }

    @Test
    void theNextIsDueAYearAfterTheLastAndAfter1095DaysOnTheRailroad() {
        assertThat(due("osha", on("2025-03-01"))).isEqualTo("2026-03-01");
        assertThat(due("msha", on("2025-03-01"))).isEqualTo("2026-03-01");
        assertThat(due("fra", on("2025-03-01"))).isEqualTo("2028-02-29");
    }

    @Test
    void whatOneTrainingLeavesOutAnotherMayCover() {
        assertThat(due("osha", on("2025-03-01", TrainingTopic.PROTECTORS, TrainingTopic.EFFECTS_OF_NOISE)))
                .as("the tests were never explained")
                .isEqualTo("2025-01-15");
        assertThat(due(
                        "osha",
                        on("2025-03-01", TrainingTopic.PROTECTORS, TrainingTopic.EFFECTS_OF_NOISE),
                        on("2025-06-01", TrainingTopic.AUDIOMETRIC_TESTS)))
                .as("a year from the earlier of the two")
                .isEqualTo("2026-03-01");
    }

    @Test
    void aTrainingLongBeforeEnrolmentDoesNotMakeItOverdueBeforeThatDay() {
        assertThat(due("osha", on("2022-01-01"))).isEqualTo("2025-01-15");
    }

    @Test
    void ruleSetsWithoutSuchADutyHaveNoRule() {
        assertThat(TrainingRule.of(RuleSets.find("niosh").orElseThrow())).isEmpty();
        assertThat(TrainingRule.of(RuleSets.find("uk-l108").orElseThrow())).isEmpty();
    }

    @Test
    void oneMoreTrainingNeverMakesTheNextDueEarlier() {
        Random random = new Random(7);
        for (int i = 0; i < 500; i++) {
            List<Training> some = IntStream.range(0, random.nextInt(4))
                    .mapToObj(n -> new Training(
                            ENROLLED.plusDays(random.nextInt(1500)), Set.of(TrainingTopic.values()[random.nextInt(3)])))
                    .toList();
            Training another = new Training(ENROLLED.plusDays(random.nextInt(1500)), ALL);
            List<Training> more = new ArrayList<>(some);
            more.add(another);
            assertThat(rule("osha").due(ENROLLED, more, Holidays.NONE))
                    .isAfterOrEqualTo(rule("osha").due(ENROLLED, some, Holidays.NONE));
        }
    }

    @Test
    void theRuleIsASentence() {
        assertThat(TrainingWords.rule(rule("msha")).withBasis())
                .isEqualTo(
                        "Training is due within 30 days of enrolment, and again within 12 months of the last; its date"
                                + " and kind are certified. [30 CFR 62.180]");
        assertThat(TrainingWords.rule(rule("fra")).text())
                .isEqualTo(
                        "Training is due within 6 months of enrolment, and again within 1,095 days of the last; it is"
                                + " offered each calendar year, 280 to 450 days apart.");
        assertThat(TrainingWords.rule(rule("osha")).text())
                .isEqualTo("Training is due at enrolment, and again within 12 months of the last.");
    }
}
