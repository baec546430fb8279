package org.thresholdregister.core.meaning.impairment;

import java.util.Optional;
import org.thresholdregister.core.meaning.DecibelMean;
import org.thresholdregister.core.regulation.Answer;

/** The grades that remain possible, from the best to the worst; the same one twice where just one does. */
public record GradeRange<G extends Enum<G> & Grade>(G best, G worst) {

    /** @param grades the whole scale, in order */
    static <G extends Enum<G> & Grade> GradeRange<G> of(DecibelMean mean, G[] grades) {
        G best = grades[0];
        G worst = grades[0];
        for (G grade : grades) {
            Answer reached = grade.isReached(mean);
            if (reached == Answer.YES) {
                best = grade;
            }
            if (reached != Answer.NO) {
                worst = grade;
            }
        }
        return new GradeRange<>(best, worst);
    }

    /** The grade, where there is just one. */
    public Optional<G> exact() {
        return best == worst ? Optional.of(best) : Optional.empty();
    }
}
