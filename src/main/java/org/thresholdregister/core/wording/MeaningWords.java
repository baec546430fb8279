package org.thresholdregister.core.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.meaning.Basis;
import org.thresholdregister.core.meaning.Caveat;
import org.thresholdregister.core.meaning.DecibelMean;
import org.thresholdregister.core.meaning.Meaning;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.regulation.Citation;

/** What the chapters of a meaning share: sources, caveats, means. */
final class MeaningWords {

    /** The right ear first, as the trade lists them. */
    static final List<Ear> EARS = List.of(Ear.RIGHT, Ear.LEFT);

    private MeaningWords() {}

    /** A chapter of results of one kind, whose caveats stand below it once. */
    static MeaningChapter chapter(String heading, List<? extends Meaning> meanings, Stream<Sentence> sentences) {
        List<Caveat> caveats = meanings.stream()
                .map(Meaning::isNot)
                .flatMap(List::stream)
                .distinct()
                .toList();
        return new MeaningChapter(heading, sentences.toList(), isNot(caveats));
    }

    /** A sentence with the publication that it rests on. */
    static Sentence sentence(String text, Meaning meaning) {
        return Sentence.of(text, citation(meaning.basis()));
    }

    /** The publication; one that was not looked up says so. */
    static Citation citation(Basis basis) {
        return switch (basis.provenance()) {
            case LOOKED_UP -> basis.source();
            case FROM_MEMORY, UNVERIFIED -> new Citation(basis.source().place() + "; not verified against the text");
        };
    }

    /** {@code This is no diagnosis, and no compensation decision.} */
    static String isNot(Collection<Caveat> caveats) {
        String list = caveats.stream().map(MeaningWords::caveat).collect(Collectors.joining("; "));
        return "What this is not: " + list + ".";
    }

    private static String caveat(Caveat caveat) {
        return switch (caveat) {
            case NO_DIAGNOSIS -> "no diagnosis";
            case NO_COMPENSATION_DECISION -> "no compensation decision";
            case NO_PROGRAMME_CRITERION -> "no criterion of the hearing-conservation programme";
            case NO_STATEMENT_OF_CAUSE -> "no statement of what caused it";
            case NO_REFERRAL_DECISION -> "no decision to refer, which is a professional's";
            case POPULATION_ESTIMATE -> "no statement about this person, but a population estimate";
        };
    }

    /** {@code 1000, 2000 and 3000 Hz}. */
    static String hertz(List<Frequency> frequencies) {
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < frequencies.size(); i++) {
            words.append(frequencies.get(i).hertz()).append(Counted.joint(i, frequencies));
        }
        return words + " Hz";
    }

    /** {@code 21.25 dB HL}, {@code 21.25 dB HL or more}, or {@value Words#NOT_KNOWN}. */
    static String level(DecibelMean mean) {
        DecibelRange sum = mean.sum();
        OptionalInt exact = sum.exact();
        if (exact.isPresent()) {
            return decimal(exact.getAsInt(), mean.count()) + " dB HL";
        }
        if (sum.lowest().isPresent()) {
            return decimal(sum.lowest().getAsInt(), mean.count()) + " dB HL or more";
        }
        return sum.highest().isPresent()
                ? decimal(sum.highest().getAsInt(), mean.count()) + " dB HL or less"
                : Words.NOT_KNOWN;
    }

    /** {@code 12.50 dB worse}, {@code 3.00 dB better}, {@code 12.50 dB worse or more}, or that it is not known. */
    static String worsening(DecibelMean difference) {
        DecibelRange sum = difference.sum();
        OptionalInt exact = sum.exact();
        if (exact.isPresent()) {
            return worse(exact.getAsInt(), difference.count());
        }
        if (sum.lowest().isPresent()) {
            return worse(sum.lowest().getAsInt(), difference.count()) + ", or worse than that";
        }
        return sum.highest().isPresent()
                ? worse(sum.highest().getAsInt(), difference.count()) + ", or better than that"
                : "worse or better by what is not known";
    }

    private static String worse(int sum, int count) {
        if (sum == 0) {
            return "the same";
        }
        return decimal(Math.abs(sum), count) + " dB " + (sum > 0 ? "worse" : "better");
    }

    /** The mean with two decimals, half up, as everywhere; from whole numbers, so that 9.67 never reads 9.66. */
    static String decimal(int sum, int count) {
        return BigDecimal.valueOf(sum)
                .divide(BigDecimal.valueOf(count), 2, RoundingMode.HALF_UP)
                .toPlainString();
    }

    /** {@code right ear yes, left ear no}. */
    static String byEar(Function<Ear, String> words) {
        return EARS.stream().map(ear -> Words.ear(ear) + " " + words.apply(ear)).collect(Collectors.joining(", "));
    }

    /** {@code met}, {@code not met}, {@code undecided}. */
    static String met(Answer answer) {
        return switch (answer) {
            case YES -> "met";
            case NO -> "not met";
            case UNDECIDED -> "undecided";
        };
    }
}
