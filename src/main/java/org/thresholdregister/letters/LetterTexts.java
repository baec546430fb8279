package org.thresholdregister.letters;

import jakarta.persistence.EntityManager;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.wording.Language;

/** The texts that hold at a site: its own, or the standard ones that come with the program. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class LetterTexts {

    private final EntityManager entityManager;

    LetterTexts(EntityManager entityManager) {
        this.entityManager = entityManager;
    }

    String inForce(String site, Language language, TextPart part) {
        return versions(site, language, part).stream()
                .findFirst()
                .map(TextVersion::content)
                .filter(content -> !content.isEmpty())
                .orElseGet(() -> standard(language, part));
    }

    /** What the site saved, the latest first. */
    List<TextVersion> versions(String site, Language language, TextPart part) {
        return entityManager
                .createQuery(
                        "select t from StoredLetterText t where t.site = :site and t.language = :language"
                                + " and t.part = :part order by t.id desc",
                        StoredLetterText.class)
                .setParameter("site", site)
                .setParameter("language", language)
                .setParameter("part", part)
                .getResultStream()
                .map(StoredLetterText::toVersion)
                .toList();
    }

    void add(StoredLetterText text) {
        entityManager.persist(text);
    }

    /** The text that comes with the program. */
    static String standard(Language language, TextPart part) {
        String name = "standard/" + part.word() + "_" + language.code() + ".txt";
        try (InputStream in = LetterTexts.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the text " + name + " is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
