package org.thresholdregister.exposure.ui;

import org.thresholdregister.exposure.HowTold;
import org.thresholdregister.exposure.MeasurementKind;
import org.thresholdregister.exposure.NoiseEntryProblem;
import org.thresholdregister.exposure.NoiseSubject;

/** What the pages of noise call things, and why something was not taken down. */
final class NoiseLabels {

    private NoiseLabels() {}

    static String kind(NoiseSubject.Kind kind) {
        return switch (kind) {
            case AREA -> "area";
            case JOB -> "job";
            case GROUP -> "noise group";
            case WORKER -> "worker";
        };
    }

    static String kind(MeasurementKind kind) {
        return switch (kind) {
            case PERSONAL_DOSIMETRY -> "dosimeter worn by a person";
            case SOUND_LEVEL_METER -> "sound level meter beside the person";
            case AREA_LEVEL -> "level of the area";
        };
    }

    static String how(HowTold how) {
        return switch (how) {
            case LETTER -> "by letter";
            case IN_PERSON -> "in person";
            case MEETING -> "at a meeting";
            case E_MAIL -> "by e-mail";
        };
    }

    static String people(int people, NoiseSubject subject) {
        return subject.kind() == NoiseSubject.Kind.AREA ? "–" : Integer.toString(people);
    }

    static String problem(NoiseEntryProblem problem) {
        return switch (problem) {
            case UNKNOWN_SITE -> "Choose one of your own sites.";
            case NOBODY_OF_THAT_NAME ->
                "Nobody at this site has it. Choose a noise group or job of the roster, or give a"
                        + " worker's number.";
            case IN_THE_FUTURE -> "This day has not come yet.";
            case TOO_EARLY -> "This is before the day on which it was measured.";
            case TEXT_MISSING -> "This has to be given.";
            case TEXT_TOO_LONG -> "A text is too long. Nothing was changed.";
            case NOT_OPEN -> "This is not open any more. Load the page again. Nothing was changed.";
        };
    }
}
