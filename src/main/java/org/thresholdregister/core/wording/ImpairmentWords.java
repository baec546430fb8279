package org.thresholdregister.core.wording;

import java.util.List;
import java.util.stream.Stream;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.meaning.impairment.Grade;
import org.thresholdregister.core.meaning.impairment.GradeRange;
import org.thresholdregister.core.meaning.impairment.Grading;
import org.thresholdregister.core.meaning.impairment.Handicap;
import org.thresholdregister.core.meaning.impairment.HandicapFormula;
import org.thresholdregister.core.meaning.impairment.ImpairmentDefinition;
import org.thresholdregister.core.meaning.impairment.MaterialImpairment;
import org.thresholdregister.core.meaning.impairment.PercentRange;
import org.thresholdregister.core.regulation.Answer;

/** Handicap, material impairment and grades in words. */
final class ImpairmentWords {

    private ImpairmentWords() {}

    static MeaningChapter handicap(Audiogram test) {
        List<Handicap> handicaps =
                List.of(Handicap.of(test, HandicapFormula.AMA_GUIDES), Handicap.of(test, HandicapFormula.AAO_HNS_1979));
        return MeaningWords.chapter(
                "Percentage of hearing handicap",
                handicaps,
                handicaps.stream().map(handicap -> MeaningWords.sentence(handicap(handicap), handicap)));
    }

    private static String handicap(Handicap handicap) {
        HandicapFormula formula = handicap.formula();
        String limit = switch (formula.limit()) {
            case AS_MEASURED -> "thresholds as measured";
            case FROM_0_TO_100 -> "each threshold limited to 0 to 100 dB";
        };
        return formula.id() + ", " + formula.version() + ": "
                + MeaningWords.byEar(ear -> percent(handicap.monaural().of(ear))) + ", both ears together "
                + percent(handicap.binaural())
                + handicap.wholePerson()
                        .map(whole -> ", whole person " + percent(whole))
                        .orElse("")
                + ". 1.5 % for each dB that the mean of " + MeaningWords.hertz(HandicapFormula.FREQUENCIES)
                + " is over 25, " + limit + ", the better ear counted five times; no allowance for age.";
    }

    /** {@code 8.75 %}, {@code 1.25 to 40 %}, or that it is not known. */
    static String percent(PercentRange range) {
        String least = range.least().rounded(2);
        String most = range.most().rounded(2);
        if (range.exact().isPresent()) {
            return least + " %";
        }
        return least.equals("0") && most.equals("100") ? Words.NOT_KNOWN : least + " to " + most + " %";
    }

    static MeaningChapter materialImpairment(Audiogram test) {
        List<MaterialImpairment> findings = MaterialImpairment.all(test);
        return MeaningWords.chapter(
                "Material impairment",
                findings,
                findings.stream().map(finding -> MeaningWords.sentence(materialImpairment(finding), finding)));
    }

    private static String materialImpairment(MaterialImpairment finding) {
        ImpairmentDefinition definition = finding.definition();
        String frequencies = MeaningWords.hertz(definition.frequencies());
        return switch (finding) {
            case MaterialImpairment.OfBothEars both ->
                "The mean of both ears at " + frequencies + " is " + MeaningWords.level(both.mean()) + "; "
                        + fence(definition) + ": " + reached(both.reached()) + ".";
            case MaterialImpairment.OfEachEar each ->
                "The mean at " + frequencies + ": "
                        + MeaningWords.byEar(
                                ear -> MeaningWords.level(each.mean().of(ear)) + " ("
                                        + reached(each.reached().of(ear)) + ")")
                        + "; " + fence(definition)
                        + ". It is the level test of the injury log, which asks for a shift besides.";
        };
    }

    private static String fence(ImpairmentDefinition definition) {
        return switch (definition.fence()) {
            case MORE_THAN -> "the fence is more than " + definition.fenceDecibels();
            case AT_LEAST -> "the fence is " + definition.fenceDecibels() + " or more";
        };
    }

    private static String reached(Answer answer) {
        return switch (answer) {
            case YES -> "over the fence";
            case NO -> "within the fence";
            case UNDECIDED -> "undecided";
        };
    }

    static MeaningChapter grades(Audiogram test) {
        List<Grading> gradings = Grading.all(test);
        return MeaningWords.chapter(
                "Grades", gradings, gradings.stream().map(grading -> MeaningWords.sentence(grade(grading), grading)));
    }

    private static String grade(Grading grading) {
        return switch (grading) {
            case Grading.Who2021 who ->
                "World Health Organization, 2021: " + range(who.grade()) + ", by the better ear's mean of "
                        + MeaningWords.hertz(Grading.WHO_FREQUENCIES) + ", " + MeaningWords.level(who.betterEar())
                        + ". Hearing loss in one ear only: " + Words.answer(who.unilateral()) + ".";
            case Grading.Who1991 who ->
                "World Health Organization, 1991: " + range(who.grade()) + ", by the same mean. Disabling in adults,"
                        + " over 40 dB: " + Words.answer(who.disabling()) + ".";
            case Grading.Clark1981 clark ->
                "Clark, 1981, for each ear, by the mean of " + MeaningWords.hertz(Grading.Clark1981.FREQUENCIES) + ": "
                        + MeaningWords.byEar(ear -> range(clark.grade().of(ear)) + " ("
                                + MeaningWords.level(clark.mean().of(ear)) + ")")
                        + ".";
        };
    }

    private static <G extends Enum<G> & Grade> String range(GradeRange<G> range) {
        return range.exact()
                .map(ImpairmentWords::grade)
                .orElseGet(() -> "anything from " + grade(range.best()) + " to " + grade(range.worst()));
    }

    private static String grade(Grade grade) {
        return switch (grade) {
            case Grade.Who2021 who ->
                switch (who) {
                    case NORMAL -> "normal hearing";
                    case MILD -> "mild loss";
                    case MODERATE -> "moderate loss";
                    case MODERATELY_SEVERE -> "moderately severe loss";
                    case SEVERE -> "severe loss";
                    case PROFOUND -> "profound loss";
                    case COMPLETE -> "complete loss";
                };
            case Grade.Who1991 who ->
                switch (who) {
                    case NONE -> "no impairment";
                    case SLIGHT -> "slight impairment";
                    case MODERATE -> "moderate impairment";
                    case SEVERE -> "severe impairment";
                    case PROFOUND -> "profound impairment";
                };
            case Grade.Clark1981 clark ->
                switch (clark) {
                    case NORMAL -> "normal";
                    case SLIGHT -> "slight";
                    case MILD -> "mild";
                    case MODERATE -> "moderate";
                    case MODERATELY_SEVERE -> "moderately severe";
                    case SEVERE -> "severe";
                    case PROFOUND -> "profound";
                };
        };
    }

    static Stream<MeaningChapter> chapters(Audiogram test) {
        return Stream.of(handicap(test), materialImpairment(test), grades(test));
    }
}
