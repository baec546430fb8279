package org.thresholdregister.employment;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import org.hibernate.annotations.Immutable;

/** That the records of a sold plant's workers were handed over. */
@Entity
@Table(name = "plant_sale_handover")
@Immutable
class StoredRecordsHandOver {

    @Id
    private long plantSaleId;

    private LocalDate handedOverOn;
    private String receivedBy;
    private String remark;
    private String enteredBy;
    private Instant enteredAt;

    @SuppressWarnings("NullAway.Init")
    protected StoredRecordsHandOver() {}

    StoredRecordsHandOver(long saleKey, PlantSale.HandOver handOver, String enteredBy, Instant enteredAt) {
        this.plantSaleId = saleKey;
        this.handedOverOn = handOver.on();
        this.receivedBy = handOver.receivedBy();
        this.remark = handOver.remark();
        this.enteredBy = enteredBy;
        this.enteredAt = enteredAt;
    }

    long saleKey() {
        return plantSaleId;
    }

    PlantSale.HandOver toHandOver() {
        return new PlantSale.HandOver(handedOverOn, receivedBy, remark);
    }
}
