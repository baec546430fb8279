package org.thresholdregister.protection;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.attenuation.AttenuationMethod;

/** A choice of a method, kept for good. */
@Entity
@Table(name = "protection_method")
@Immutable
class StoredMethodChoice {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "protection_method_seq")
    @SequenceGenerator(name = "protection_method_seq", sequenceName = "protection_method_seq", allocationSize = 10)
    private @Nullable Long id;

    private String site;
    private String method;
    private String reason;
    private String chosenBy;
    private Instant chosenAt;

    @SuppressWarnings("NullAway.Init")
    protected StoredMethodChoice() {}

    StoredMethodChoice(MethodChoice choice, String chosenBy, Instant chosenAt) {
        this.site = choice.site();
        this.method = choice.method().word();
        this.reason = choice.reason();
        this.chosenBy = chosenBy;
        this.chosenAt = chosenAt;
    }

    MethodChoice toChoice() {
        return new MethodChoice(
                site,
                AttenuationMethod.find(method)
                        .orElseThrow(() -> new IllegalStateException("the program has no method " + method)),
                reason);
    }
}
