package org.thresholdregister.core.wording;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.clinical.CanalFinding;
import org.thresholdregister.core.clinical.ClinicalFacts;
import org.thresholdregister.core.clinical.EarLook;
import org.thresholdregister.core.clinical.HealthHistory;
import org.thresholdregister.core.clinical.HealthQuestion;
import org.thresholdregister.core.regulation.Citation;

/** The clinical part of a record in words. */
public final class ClinicalWords {

    /** A refusal leaves the duty as it is: the test is still to be made available. */
    public static final Sentence AFTER_REFUSAL = Sentence.of(
            "A test has to be made available, and nothing that was looked up lets a refusal end that: it is offered again.",
            new Citation("29 CFR 1910.95(g)(1), read so"));

    /** What the form says that a worker signs who does not want the test. */
    public static final String REFUSAL_HEADING = "I do not want the hearing test";

    public static final List<String> REFUSAL_SENTENCES = List.of(
            "My employer has offered me a hearing test. It is free for me. It shows early whether noise is harming my"
                    + " hearing.",
            "I do not want the test today. I can change my mind at any time. The test will be offered to me again.");

    private ClinicalWords() {}

    /** {@code For Ada Núñez, number M-1.} */
    public static String refusalFor(String name, String workerId) {
        return "For " + (name.isEmpty() ? "the worker with" : name + ",") + " number " + workerId + ".";
    }

    /** What a question is about, as a label: {@code Earlier noisy jobs}. */
    public static String question(HealthQuestion question) {
        return switch (question) {
            case NOISY_JOBS -> "Earlier noisy jobs";
            case SHOOTING -> "Hunting or shooting";
            case LOUD_MUSIC -> "Loud music";
            case POWER_TOOLS -> "Power tools at home";
            case MILITARY_SERVICE -> "Military service";
            case EAR_ILLNESS -> "Ear illness";
            case EAR_OPERATION -> "Ear operation";
            case HEAD_INJURY -> "Head injury";
            case HARMFUL_MEDICINES -> "Medicines that can harm hearing";
            case SOLVENTS -> "Work with solvents";
            case FAMILY -> "Hearing loss in the family";
            case COLD -> "Cold or sinus trouble today";
            case RINGING -> "Ringing in the ears";
            case DIZZINESS -> "Dizziness";
        };
    }

    public static String group(HealthQuestion.Group group) {
        return switch (group) {
            case NOISE -> "Noise besides this job";
            case HEALTH -> "Ears and health";
            case TODAY -> "Today";
        };
    }

    public static String finding(CanalFinding finding) {
        return switch (finding) {
            case CLEAR -> "clear";
            case WAX_PARTIAL -> "wax, partial";
            case WAX_BLOCKED -> "wax, blocked";
            case DRUM_NOT_SEEN -> "drum not seen";
            case RED -> "red";
            case DISCHARGE -> "discharge";
            case PERFORATION -> "perforation";
            case OTHER -> "other";
        };
    }

    /** {@code long gun at the right shoulder}. */
    public static String shoulder(Ear side) {
        return "long gun at the " + side.word() + " shoulder";
    }

    /** The answers as one line: {@code Yes: loud music (bands on weekends). No: solvents.} */
    public static String history(HealthHistory history) {
        List<String> parts = new ArrayList<>();
        String yes = answered(history, true);
        String no = answered(history, false);
        if (!yes.isEmpty()) {
            parts.add("Yes: " + yes + ".");
        }
        if (!no.isEmpty()) {
            parts.add("No: " + no + ".");
        }
        history.shoulder().ifPresent(side -> parts.add(Words.capitalised(shoulder(side)) + "."));
        return String.join(" ", parts);
    }

    private static String answered(HealthHistory history, boolean yes) {
        return String.join(
                ", ",
                Arrays.stream(HealthQuestion.values())
                        .flatMap(question -> history.reply(question).stream()
                                .filter(reply -> reply.yes() == yes)
                                .map(reply -> uncapitalised(question(question))
                                        + (reply.note().isEmpty() ? "" : " (" + reply.note() + ")")))
                        .toList());
    }

    private static String uncapitalised(String text) {
        return Character.toLowerCase(text.charAt(0)) + text.substring(1);
    }

    /** {@code wax, partial; red. Sore since Monday}; {@code not looked into} where nobody did. */
    public static String look(EarLook look) {
        if (look.isEmpty()) {
            return "not looked into";
        }
        String findings = String.join(
                "; ",
                Arrays.stream(CanalFinding.values())
                        .filter(look.findings()::contains)
                        .map(ClinicalWords::finding)
                        .toList());
        return findings + (findings.isEmpty() || look.note().isEmpty() ? "" : ". ") + look.note();
    }

    /** Both ears as one line, with whether the test was put off. */
    public static String ears(ClinicalFacts facts) {
        return "Left: " + look(facts.ears().left()) + ". Right: "
                + look(facts.ears().right()) + "." + (facts.postponed() ? " The test was postponed." : "");
    }
}
