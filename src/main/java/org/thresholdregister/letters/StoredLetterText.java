package org.thresholdregister.letters;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.wording.Language;

/** A text that a site wrote, kept for good. */
@Entity
@Table(name = "letter_text")
@Immutable
class StoredLetterText {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "letter_text_seq")
    @SequenceGenerator(name = "letter_text_seq", sequenceName = "letter_text_seq", allocationSize = 1)
    private @Nullable Long id;

    private String site;

    @Enumerated(EnumType.STRING)
    private Language language;

    @Enumerated(EnumType.STRING)
    private TextPart part;

    private String content;
    private String savedBy;
    private Instant savedAt;

    @SuppressWarnings("NullAway.Init")
    protected StoredLetterText() {}

    StoredLetterText(String site, Language language, TextPart part, String content, String savedBy, Instant savedAt) {
        this.site = site;
        this.language = language;
        this.part = part;
        this.content = content;
        this.savedBy = savedBy;
        this.savedAt = savedAt;
    }

    TextVersion toVersion() {
        return new TextVersion(content, savedBy, savedAt);
    }
}
