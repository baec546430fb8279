package org.thresholdregister.employment;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

/** A plant sold with its workers. */
@Entity
@Table(name = "plant_sale")
@Immutable
class StoredPlantSale {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "plant_sale_seq")
    @SequenceGenerator(name = "plant_sale_seq", sequenceName = "plant_sale_seq", allocationSize = 1)
    private @Nullable Long id;

    private String site;
    private LocalDate soldOn;
    private String successor;
    private String enteredBy;
    private Instant enteredAt;

    @SuppressWarnings("NullAway.Init")
    protected StoredPlantSale() {}

    StoredPlantSale(String site, LocalDate soldOn, String successor, String enteredBy, Instant enteredAt) {
        this.site = site;
        this.soldOn = soldOn;
        this.successor = successor;
        this.enteredBy = enteredBy;
        this.enteredAt = enteredAt;
    }

    long key() {
        return Objects.requireNonNull(id, "a sale that has not been stored");
    }

    LocalDate soldOn() {
        return soldOn;
    }

    PlantSale toSale(int workers, Optional<PlantSale.HandOver> handOver) {
        return new PlantSale(key(), site, soldOn, successor, workers, enteredBy, handOver);
    }
}
