package org.thresholdregister.core.wording;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.meaning.Meaning;
import org.thresholdregister.core.meaning.shape.Asymmetry;
import org.thresholdregister.core.meaning.shape.AsymmetryRule;
import org.thresholdregister.core.meaning.shape.BilateralLoss;
import org.thresholdregister.core.meaning.shape.Notch;
import org.thresholdregister.core.meaning.shape.NotchDefinition;
import org.thresholdregister.core.regulation.Answer;

/** Notches and differences between the ears in words. */
final class ShapeWords {

    private ShapeWords() {}

    static MeaningChapter notches(Audiogram test) {
        List<PerEar<Notch>> notches = Arrays.stream(NotchDefinition.values())
                .map(definition -> PerEar.from(ear -> Notch.of(test, ear, definition)))
                .toList();
        return MeaningWords.chapter(
                "Notches",
                notches.stream().map(PerEar::left).toList(),
                notches.stream().map(ears -> MeaningWords.sentence(notch(ears), ears.left())));
    }

    private static String notch(PerEar<Notch> ears) {
        return name(ears.left().definition()) + ": "
                + MeaningWords.byEar(ear -> Words.answer(ears.of(ear).answer()) + index(ears.of(ear))) + ". "
                + meaning(ears.left().definition());
    }

    private static String index(Notch notch) {
        return notch.index()
                .flatMap(index -> index.sum().exact().stream()
                        .mapToObj(sum -> " (" + MeaningWords.decimal(sum, index.count()) + " dB)")
                        .findFirst())
                .orElse("");
    }

    private static String name(NotchDefinition definition) {
        return switch (definition) {
            case COLES_LUTMAN_BUFFIN_2000 -> "Coles, Lutman and Buffin";
            case NISKAR_2001 -> "Niskar";
            case HOFFMAN_2006 -> "Hoffman";
            case NOTCH_INDEX -> "Notch index";
            case WILSON_MCARDLE_2013 -> "Wilson and McArdle";
        };
    }

    private static String meaning(NotchDefinition definition) {
        return switch (definition) {
            case COLES_LUTMAN_BUFFIN_2000 ->
                "Somewhere from 3000 to 6000 Hz 10 dB or more worse than at 1000 or 2000 Hz, and than at 6000 or 8000 Hz.";
            case NISKAR_2001 ->
                "500 and 1000 Hz within 15 dB HL, from 3000 to 6000 Hz 15 dB or more worse than these and 10 dB or more"
                        + " worse than at 8000 Hz.";
            case HOFFMAN_2006 ->
                "From 3000 to 6000 Hz 15 dB or more worse than the mean of 500 and 1000 Hz and 5 dB or more worse than"
                        + " at 8000 Hz.";
            case NOTCH_INDEX -> "The mean of 2000, 3000 and 4000 Hz less the mean of 1000 and 8000 Hz is more than 0.";
            case WILSON_MCARDLE_2013 ->
                "Somewhere from 3000 to 6000 Hz 10 dB or more worse than at 2000 Hz and than at 8000 Hz.";
        };
    }

    static MeaningChapter asymmetry(Audiogram test) {
        List<Asymmetry> asymmetries = Asymmetry.all(test);
        BilateralLoss bilateral = BilateralLoss.of(test);
        List<Meaning> meanings = new ArrayList<>(asymmetries);
        meanings.add(bilateral);
        return MeaningWords.chapter(
                "Differences between the ears",
                meanings,
                Stream.concat(
                        asymmetries.stream().map(found -> MeaningWords.sentence(asymmetry(found), found)),
                        Stream.of(MeaningWords.sentence(bilateral(bilateral), bilateral))));
    }

    private static String asymmetry(Asymmetry found) {
        return rule(found.rule()) + ": " + answer(found) + "." + numbers(found);
    }

    private static String answer(Asymmetry found) {
        for (Ear ear : MeaningWords.EARS) {
            if (found.isWorse().of(ear) == Answer.YES) {
                return "yes, the " + Words.ear(ear) + " is the worse one";
            }
        }
        return Words.answer(found.answer());
    }

    /** The means that are compared; the rules that look at each frequency by itself are seen in the audiogram. */
    private static String numbers(Asymmetry found) {
        if (isOfEachFrequency(found.rule())) {
            return "";
        }
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < found.rule().compared().size(); i++) {
            parts.add(MeaningWords.worsening(found.differences().left().get(i)) + " at "
                    + MeaningWords.hertz(found.rule().compared().get(i)));
        }
        return parts.stream().collect(Collectors.joining("; ", " The left ear's mean against the right ear's: ", "."));
    }

    private static boolean isOfEachFrequency(AsymmetryRule rule) {
        return switch (rule) {
            case TEN_AT_TWO_OR_FIFTEEN_AT_ONE, TWENTY_AT_TWO -> true;
            case AAO_HNS_RED_FLAG, AAO_HNS_CONSERVATION_PROGRAMME, RULE_3000, HSE_SUMS -> false;
        };
    }

    private static String rule(AsymmetryRule rule) {
        return switch (rule) {
            case AAO_HNS_RED_FLAG -> "Pure-tone average more than 15 dB worse on one side";
            case AAO_HNS_CONSERVATION_PROGRAMME ->
                "More than 15 dB worse on one side in the low frequencies, or more than 30 dB in the high ones";
            case RULE_3000 -> "15 dB or more worse on one side at 3000 Hz";
            case TEN_AT_TWO_OR_FIFTEEN_AT_ONE ->
                "10 dB or more worse on one side at two frequencies next to each other, or 15 dB or more at one";
            case TWENTY_AT_TWO -> "20 dB or more worse on one side at two frequencies next to each other";
            case HSE_SUMS -> "Sums of 1000, 2000, 3000 and 4000 Hz more than 40 dB apart";
        };
    }

    private static String bilateral(BilateralLoss found) {
        return "Pure-tone average of more than 30 dB in both ears: " + Words.answer(found.answer()) + ". Means of "
                + MeaningWords.hertz(AsymmetryRule.AAO_HNS_RED_FLAG.compared().getFirst()) + ": "
                + MeaningWords.byEar(ear -> MeaningWords.level(found.mean().of(ear))) + ".";
    }

    static Stream<MeaningChapter> chapters(Audiogram test) {
        return Stream.of(notches(test), asymmetry(test));
    }
}
