package org.thresholdregister.platform.query;

import jakarta.persistence.Converter;
import java.util.Locale;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.regulation.Answer;

/** The core's constants in the database. */
final class WordConverters {

    private WordConverters() {}

    @Converter(autoApply = true)
    static class OfSex extends WordConverter<Sex> {
        OfSex() {
            super(Sex.class, Sex::code);
        }
    }

    @Converter(autoApply = true)
    static class OfEar extends WordConverter<Ear> {
        OfEar() {
            super(Ear.class, Ear::word);
        }
    }

    @Converter(autoApply = true)
    static class OfEars extends WordConverter<Ears> {
        OfEars() {
            super(Ears.class, Ears::word);
        }
    }

    @Converter(autoApply = true)
    static class OfTestPurpose extends WordConverter<TestPurpose> {
        OfTestPurpose() {
            super(TestPurpose.class, TestPurpose::word);
        }
    }

    @Converter(autoApply = true)
    static class OfDecisionKind extends WordConverter<DecisionKind> {
        OfDecisionKind() {
            super(DecisionKind.class, DecisionKind::word);
        }
    }

    @Converter(autoApply = true)
    static class OfFollowUpKind extends WordConverter<FollowUpKind> {
        OfFollowUpKind() {
            super(FollowUpKind.class, FollowUpKind::word);
        }
    }

    @Converter(autoApply = true)
    static class OfOutcome extends WordConverter<Outcome> {
        OfOutcome() {
            super(Outcome.class, Outcome::word);
        }
    }

    @Converter(autoApply = true)
    static class OfRecordability extends WordConverter<Recordability> {
        OfRecordability() {
            super(Recordability.class, Recordability::word);
        }
    }

    @Converter(autoApply = true)
    static class OfAgeCorrection extends WordConverter<AgeCorrection> {
        OfAgeCorrection() {
            super(AgeCorrection.class, correction -> correction.name().toLowerCase(Locale.ROOT));
        }
    }

    @Converter(autoApply = true)
    static class OfBaselineRevision extends WordConverter<BaselineRevision> {
        OfBaselineRevision() {
            super(BaselineRevision.class, revision -> revision.name().toLowerCase(Locale.ROOT));
        }
    }

    @Converter(autoApply = true)
    static class OfBaselineChange extends WordConverter<BaselineChange.Kind> {
        OfBaselineChange() {
            super(BaselineChange.Kind.class, BaselineChange.Kind::word);
        }
    }

    @Converter(autoApply = true)
    static class OfAnswer extends WordConverter<Answer> {
        OfAnswer() {
            super(Answer.class, answer -> answer.name().toLowerCase(Locale.ROOT));
        }
    }
}
