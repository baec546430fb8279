package org.thresholdregister.core.wording;

import java.util.List;

/**
 * One thing that an audiogram means, in words.
 *
 * @param sentences what was found, each with its source
 * @param isNot what it is not, in one sentence
 */
public record MeaningChapter(String heading, List<Sentence> sentences, String isNot) {
    public MeaningChapter {
        sentences = List.copyOf(sentences);
    }
}
