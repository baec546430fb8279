package org.thresholdregister.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thresholdregister.core.followup.FollowUp;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.intake.FileSet;
import org.thresholdregister.intake.Intake;
import org.thresholdregister.intake.ProblemList;
import org.thresholdregister.intake.SourceFile;
import org.thresholdregister.intake.UnusableFileException;

/** Imports and judges the committed sample as a user would on its day, and looks at what there is to see. */
class SampleJudgementTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 24);
    private static final ProblemList PROBLEMS = new ProblemList();

    /** What was judged of one worker. */
    private record Case(WorkerHistory history, WorkerJudgement judgement) {
        List<Judged> judged() {
            return judgement.determinations().stream()
                    .filter(Judged.class::isInstance)
                    .map(Judged.class::cast)
                    .toList();
        }
    }

    private static List<Case> cases = List.of();

    @BeforeAll
    static void importAndJudge() throws IOException, UnusableFileException {
        FileSet files = FileSet.of(file("roster.csv"), file("audiograms.csv")).withDecisions(file("decisions.csv"));
        cases = Intake.read(files, TODAY, PROBLEMS)
                .histories()
                .map(history -> new Case(history, Judge.judge(history, JudgingOptions.asOf(TODAY))))
                .toList();
    }

    private static SourceFile file(String name) {
        Path path = SampleFiles.DIRECTORY.resolve(name);
        return SourceFile.of(path);
    }

    @Test
    void everyRowIsTakenWithoutAProblem() {
        assertThat(PROBLEMS.inFileOrder()).isEmpty();
        assertThat(cases).hasSameSizeAs(SampleFiles.ROSTER);
        assertThat(cases.stream()
                        .mapToInt(one -> one.history().audiograms().size())
                        .sum())
                .isEqualTo(SampleFiles.AUDIOGRAMS.size());
        assertThat(cases.stream()
                        .mapToInt(one -> one.history().decisions().size())
                        .sum())
                .isEqualTo(SampleFiles.DECISIONS.size());
    }

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
                    kind,          overdue at least, at most, open at least, at most
                    RETEST,        0,                0,       2,             8
                    NOTICE,        2,                4,       1,             8
                    RECORD,        1,                2,       1,             2
                    ANNUAL_TEST,   10,               25,      200,           300
                    BASELINE_TEST, 1,                3,       3,             6
                    """)
    void todayHasSomethingOfEachKind(FollowUpKind kind, int overdueFrom, int overdueTo, int openFrom, int openTo) {
        List<FollowUp> followUps = cases.stream()
                .flatMap(one -> one.judgement().followUps().stream())
                .filter(followUp -> followUp.kind() == kind)
                .toList();
        assertThat(followUps.stream()
                        .filter(followUp -> followUp.isOverdue(TODAY))
                        .count())
                .as("overdue")
                .isBetween((long) overdueFrom, (long) overdueTo);
        assertThat(followUps.stream()
                        .filter(followUp -> !followUp.isOverdue(TODAY))
                        .count())
                .as("open")
                .isBetween((long) openFrom, (long) openTo);
    }

    @Test
    void someAnnualTestsFallDueInTheNextWeeks() {
        assertThat(cases.stream()
                        .flatMap(one -> one.judgement().followUps().stream())
                        .filter(followUp -> followUp.kind() == FollowUpKind.ANNUAL_TEST)
                        .filter(followUp ->
                                !followUp.isOverdue(TODAY) && followUp.dueDate().isBefore(TODAY.plusWeeks(6)))
                        .count())
                .isBetween(10L, 60L);
    }

    /** About one test in twenty shows a shift that was not there before, and a good third of those go away again. */
    @Test
    void shiftsComeUpAsOftenAsInARealPlant() {
        long tests = tests(_ -> true);
        long notConfirmed = tests(judged -> judged.outcome() == Outcome.NOT_CONFIRMED);
        long shifts = tests(SampleJudgementTest::isShift);
        assertThat(tests).isGreaterThan(2000);
        assertThat((double) shifts / tests).isBetween(0.04, 0.10);
        assertThat((double) peopleWithANewShift() / tests).isBetween(0.02, 0.05);
        assertThat((double) notConfirmed / (notConfirmed + peopleWithANewShift()))
                .isBetween(0.25, 0.5);
    }

    private static boolean isShift(Judged judged) {
        return switch (judged.outcome()) {
            case CONFIRMED, AWAITING_RETEST, NOT_CONFIRMED -> true;
            case BASELINE, BEFORE_BASELINE, NO_SHIFT, UNDECIDED, RETEST -> false;
        };
    }

    private static long tests(Predicate<Judged> wanted) {
        return cases.stream()
                .mapToLong(one -> one.judged().stream()
                        .filter(wanted)
                        .map(judged -> judged.test())
                        .distinct()
                        .count())
                .sum();
    }

    /** Confirmed shifts of an ear that was not found shifted from the same baseline before. */
    private static long peopleWithANewShift() {
        long found = 0;
        for (Case one : cases) {
            Set<List<Object>> known = new HashSet<>();
            Set<LocalDate> days = new HashSet<>();
            for (Judged judged : one.judged()) {
                if (judged.outcome() == Outcome.CONFIRMED
                        && known.add(List.of(
                                judged.ear(), judged.comparison().earlier().date()))) {
                    days.add(judged.test().date());
                }
            }
            found += days.size();
        }
        return found;
    }

    /** The outcome that the README's stories lead to. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
                    worker,  test,       left,           right
                    FG-0034, 2016-11-22, BEFORE_BASELINE, BEFORE_BASELINE
                    FG-0061, 2022-02-08, CONFIRMED,      CONFIRMED
                    FG-0064, 2021-06-08, NOT_CONFIRMED,  NO_SHIFT
                    FG-0066, 2020-02-11, NOT_CONFIRMED,  NOT_CONFIRMED
                    FG-0072, 2022-03-09, NO_SHIFT,       NOT_CONFIRMED
                    FG-0073, 2022-03-08, NO_SHIFT,       CONFIRMED
                    FG-0073, 2022-04-08, NO_SHIFT,       NO_SHIFT
                    FG-0078, 2019-09-10, NOT_CONFIRMED,  NO_SHIFT
                    FG-0081, 2020-01-28, NOT_CONFIRMED,  CONFIRMED
                    FG-0084, 2021-04-13, NOT_CONFIRMED,  CONFIRMED
                    FG-0088, 2023-02-07, CONFIRMED,      CONFIRMED
                    FG-0088, 2023-03-20, NOT_CONFIRMED,  NOT_CONFIRMED
                    FG-0090, 2024-05-28, NO_SHIFT,       NO_SHIFT
                    FG-0093, 2023-12-12, NO_SHIFT,       CONFIRMED
                    FG-0095, 2025-05-06, CONFIRMED,      NO_SHIFT
                    FG-0101, 2026-11-04, AWAITING_RETEST, AWAITING_RETEST
                    FG-0107, 2021-01-19, CONFIRMED,      CONFIRMED
                    FG-0113, 2022-03-03, NO_SHIFT,       UNDECIDED
                    FG-0116, 2021-07-06, UNDECIDED,      NO_SHIFT
                    FG-0118, 2024-08-06, NO_SHIFT,       UNDECIDED
                    FG-0120, 2019-09-04, UNDECIDED,      UNDECIDED
                    FG-0124, 2020-10-06, NO_SHIFT,       CONFIRMED
                    FG-0137, 2025-08-26, CONFIRMED,      CONFIRMED
                    FG-0156, 2020-07-07, NO_SHIFT,       NO_SHIFT
                    FG-0172, 2026-04-21, UNDECIDED,      NO_SHIFT
                    FG-0176, 2025-04-29, NO_SHIFT,       UNDECIDED
                    FG-0195, 2021-03-09, CONFIRMED,      NO_SHIFT
                    FG-0198, 2024-02-20, NO_SHIFT,       CONFIRMED
                    FG-0201, 2019-01-22, CONFIRMED,      NO_SHIFT
                    FG-0201, 2024-01-23, CONFIRMED,      NO_SHIFT
                    """)
    void theStoriesEndAsTheReadmeTells(String worker, LocalDate test, Outcome left, Outcome right) {
        List<Determination> both = cases.stream()
                .filter(one -> one.history().worker().workerId().equals(worker))
                .flatMap(one -> one.judgement().determinations().stream())
                .filter(determination ->
                        determination.test().date().equals(test) && determination.outcome() != Outcome.RETEST)
                .toList();
        assertThat(both).extracting(Determination::outcome).containsExactly(left, right);
    }
}
