package org.thresholdregister.sample;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.judging.WorkerFacts;

/** One worker in the making: the line on the roster, the tests and the decisions. A story changes it step by step. */
final class Worker {

    final int number;
    final String id;
    final Dice dice;
    final List<HearingTest> tests = new ArrayList<>();
    final List<Decision> decisions = new ArrayList<>();

    private String familyName;
    private String givenName;
    private Sex sex;
    private LocalDate birthDate;
    private LocalDate hired;
    private LocalDate enrolled;
    private Optional<LocalDate> left = Optional.empty();
    private Plant.Department department;
    private String jobTitle;
    private final String language;
    private final boolean hasEmail;
    private boolean sexOnFile = true;
    private boolean birthDateOnFile = true;
    private boolean placeOnFile = true;
    private boolean caseLeftOpen;
    private boolean steady;
    private @Nullable Hearing hearing;

    Worker(int number, int idDigits, LocalDate hired, int ageWhenHired) {
        this.number = number;
        this.id = String.format(Locale.ROOT, "FG-%0" + idDigits + "d", number);
        this.dice = Dice.of(number, "person");
        this.sex = dice.chance(0.68) ? Sex.MALE : Sex.FEMALE;
        this.familyName = Names.family(number);
        this.givenName = Names.given(number, sex);
        this.hired = hired;
        this.enrolled = hired.isBefore(Plant.PROGRAMME_START) ? Plant.PROGRAMME_START : hired;
        this.birthDate = hired.minusYears(ageWhenHired).minusDays(dice.between(20, 360));
        this.department = Plant.departmentFor(dice);
        this.jobTitle = dice.pick(department.jobTitles());
        this.language = dice.chance(0.02) ? "" : dice.chance(0.14) ? "es" : "en";
        this.hasEmail = dice.chance(0.8);
    }

    Sex sex() {
        return sex;
    }

    LocalDate birthDate() {
        return birthDate;
    }

    LocalDate enrolled() {
        return enrolled;
    }

    Optional<LocalDate> left() {
        return left;
    }

    Worker is(Sex newSex, String newBirthDate) {
        sex = newSex;
        givenName = Names.given(number, newSex);
        birthDate = LocalDate.parse(newBirthDate);
        return this;
    }

    Worker named(String newGivenName, String newFamilyName) {
        givenName = newGivenName;
        familyName = newFamilyName;
        return this;
    }

    Worker hired(String day) {
        hired = LocalDate.parse(day);
        enrolled = hired.isBefore(Plant.PROGRAMME_START) ? Plant.PROGRAMME_START : hired;
        return this;
    }

    Worker leaves(LocalDate day) {
        left = Optional.of(day);
        return this;
    }

    Worker worksIn(Plant.Department newDepartment) {
        department = newDepartment;
        jobTitle = dice.pick(newDepartment.jobTitles());
        return this;
    }

    Worker sexNotOnFile() {
        sexOnFile = false;
        return this;
    }

    Worker birthDateNotOnFile() {
        birthDateOnFile = false;
        return this;
    }

    Worker placeNotOnFile() {
        placeOnFile = false;
        return this;
    }

    /** Nobody gets round to entering this worker's case. */
    Worker leaveCaseOpen() {
        caseLeftOpen = true;
        return this;
    }

    boolean isCaseLeftOpen() {
        return caseLeftOpen;
    }

    /** Whether this worker's tests vary less than usual, so that a story shows what it says. */
    Worker steady(boolean nowSteady) {
        steady = nowSteady;
        return this;
    }

    /** For good, by so many dB at 3000 Hz. */
    Worker worsens(Ears ears, LocalDate from, double decibels) {
        hearing().worsens(ears, from, decibels);
        return this;
    }

    Worker worsens(Ears ears, String from, double decibels) {
        return worsens(ears, LocalDate.parse(from), decibels);
    }

    /** Tests the worker and puts the result on record. */
    HearingTest test(LocalDate day, TestPurpose purpose) {
        Dice luck = Dice.of(number, purpose.word() + day);
        HearingTest test = steady
                ? Booth.steady(hearing(), department.site(), day, purpose, luck)
                : Booth.usual(hearing(), department.site(), day, purpose, luck);
        tests.add(test);
        return test;
    }

    Worker baseline(String day) {
        test(LocalDate.parse(day), TestPurpose.BASELINE);
        return this;
    }

    Worker annual(String day) {
        test(LocalDate.parse(day), TestPurpose.ANNUAL);
        return this;
    }

    Worker retest(String day) {
        test(LocalDate.parse(day), TestPurpose.RETEST);
        return this;
    }

    /** An annual test in each of these years, about that day. */
    Worker yearly(int month, int dayOfMonth, int firstYear, int lastYear) {
        for (int year = firstYear; year <= lastYear; year++) {
            LocalDate about = LocalDate.of(year, month, dayOfMonth).plusDays(dice.between(-9, 6));
            test(Plant.openOn(about), TestPurpose.ANNUAL);
        }
        return this;
    }

    /** Rewrites what the latest test put on record. */
    Worker latest(UnaryOperator<Audiogram> change) {
        tests.set(tests.size() - 1, tests.getLast().with(change));
        return this;
    }

    Worker remark(String remark) {
        tests.set(tests.size() - 1, tests.getLast().withRemark(remark));
        return this;
    }

    Worker decided(Ears ears, LocalDate testDate, DecisionKind kind, LocalDate on, String by, String reason) {
        decisions.add(new Decision(ears, testDate, kind, on, by, reason));
        return this;
    }

    /** To be called once the person's facts stand. */
    private Hearing hearing() {
        Hearing known = hearing;
        if (known == null) {
            known = new Hearing(Dice.of(number, "hearing"), sex, birthDate, hired, department.twaDba());
            hearing = known;
        }
        return known;
    }

    /** What the rules may know of the worker. */
    WorkerFacts facts() {
        return new WorkerFacts(
                id,
                Optional.of(birthDate).filter(_ -> birthDateOnFile),
                Optional.of(sex).filter(_ -> sexOnFile),
                Optional.of(enrolled),
                left);
    }

    List<HearingTest> testsInOrder() {
        return tests.stream()
                .sorted(Comparator.comparing(HearingTest::audiogram, Audiogram.CHRONOLOGICAL))
                .toList();
    }

    List<Decision> decisionsInOrder() {
        return decisions.stream()
                .sorted(Comparator.comparing(Decision::testDate)
                        .thenComparing(Decision::decidedOn)
                        .thenComparing(Decision::kind)
                        .thenComparing(Decision::ears))
                .toList();
    }

    List<String> rosterCells() {
        return List.of(
                id,
                familyName,
                givenName,
                birthDateOnFile ? birthDate.toString() : "",
                sexOnFile ? sex.code() : "",
                hired.toString(),
                left.map(LocalDate::toString).orElse(""),
                placeOnFile ? department.site() : "",
                placeOnFile ? department.name() : "",
                placeOnFile ? jobTitle : "",
                placeOnFile ? department.noiseGroup() : "",
                placeOnFile ? Double.toString(department.twaDba()) : "",
                enrolled.toString(),
                hasEmail && left.isEmpty() ? Names.email(givenName, familyName, number) : "",
                language);
    }
}
