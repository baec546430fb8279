package org.thresholdregister.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ProblemWordingTest {

    @Test
    void everyKindHasASentenceOfItsOwn() {
        Set<String> sentences = new HashSet<>();
        for (ProblemKind kind : ProblemKind.values()) {
            String sentence = ProblemWording.sentence(kind, "birth_date", "2026-06-30");
            assertThat(sentence).matches("(?s)[A-Z].*\\.").doesNotContain("null", "  ");
            sentences.add(sentence);
        }
        assertThat(sentences).hasSameSizeAs(ProblemKind.values());
    }
}
