package org.thresholdregister.clinical;

import jakarta.persistence.Embeddable;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.clinical.CanalFinding;
import org.thresholdregister.core.clinical.ClinicalFacts;
import org.thresholdregister.core.clinical.EarLook;
import org.thresholdregister.core.clinical.HealthHistory;
import org.thresholdregister.core.clinical.HealthQuestion;
import org.thresholdregister.core.clinical.Reply;

/** The facts as columns: answers by lines as question=yes=note, findings as words between commas. */
@Embeddable
class StoredClinicalFacts {

    private static final Map<String, HealthQuestion> QUESTIONS = Arrays.stream(HealthQuestion.values())
            .collect(Collectors.toMap(HealthQuestion::word, question -> question));
    private static final Map<String, CanalFinding> FINDINGS =
            Arrays.stream(CanalFinding.values()).collect(Collectors.toMap(CanalFinding::word, Function.identity()));

    private String answers;
    private @Nullable Ear shoulder;
    private String leftFindings;
    private String leftNote;
    private String rightFindings;
    private String rightNote;
    private boolean postponed;
    private String said;

    @SuppressWarnings("NullAway.Init")
    protected StoredClinicalFacts() {}

    StoredClinicalFacts(ClinicalFacts facts) {
        this.answers = new TreeMap<>(facts.history().replies())
                .entrySet().stream()
                        .map(answer -> answer.getKey().word() + "="
                                + (answer.getValue().yes() ? "yes" : "no") + "="
                                + oneLine(answer.getValue().note()))
                        .collect(Collectors.joining("\n"));
        this.shoulder = facts.history().shoulder().orElse(null);
        this.leftFindings = words(facts.ears().left());
        this.leftNote = facts.ears().left().note();
        this.rightFindings = words(facts.ears().right());
        this.rightNote = facts.ears().right().note();
        this.postponed = facts.postponed();
        this.said = facts.said();
    }

    private static String oneLine(String note) {
        return note.replaceAll("\\R", " ");
    }

    private static String words(EarLook look) {
        return Arrays.stream(CanalFinding.values())
                .filter(look.findings()::contains)
                .map(CanalFinding::word)
                .collect(Collectors.joining(","));
    }

    ClinicalFacts toFacts() {
        Map<HealthQuestion, Reply> replies = new EnumMap<>(HealthQuestion.class);
        answers.lines()
                .map(line -> line.split("=", 3))
                .forEach(parts -> replies.put(known(QUESTIONS, parts[0]), new Reply(parts[1].equals("yes"), parts[2])));
        return new ClinicalFacts(
                new HealthHistory(replies, Optional.ofNullable(shoulder)),
                new PerEar<>(look(leftFindings, leftNote), look(rightFindings, rightNote)),
                postponed,
                said);
    }

    private static EarLook look(String words, String note) {
        Set<CanalFinding> findings = Stream.of(words.split(","))
                .filter(word -> !word.isEmpty())
                .map(word -> known(FINDINGS, word))
                .collect(Collectors.toUnmodifiableSet());
        return new EarLook(findings, note);
    }

    private static <T> T known(Map<String, T> words, String word) {
        T value = words.get(word);
        if (value == null) {
            throw new IllegalStateException("a stored word of the clinical part is not known to this version");
        }
        return value;
    }
}
