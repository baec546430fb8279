package org.thresholdregister.protection;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.platform.documents.Document;

@Entity
@Table(name = "fit_test")
class StoredFitTest {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "fit_test_seq")
    @SequenceGenerator(name = "fit_test_seq", sequenceName = "fit_test_seq", allocationSize = 50)
    private @Nullable Long id;

    private long workerId;
    private long protectorId;
    private String size;
    private LocalDate testedOn;
    private BigDecimal par;
    private int percentile;
    private String method;
    private String tester;
    private @Nullable Long documentId;
    private String enteredBy;
    private Instant enteredAt;
    private String withdrawnReason = "";
    private String withdrawnBy = "";

    @SuppressWarnings("NullAway.Init")
    protected StoredFitTest() {}

    StoredFitTest(long workerKey, NewFitTest test, Optional<Long> document, String enteredBy, Instant enteredAt) {
        this.workerId = workerKey;
        this.protectorId = test.productKey();
        this.size = test.size();
        this.testedOn = test.testedOn();
        this.par = test.par();
        this.percentile = test.percentile();
        this.method = test.method();
        this.tester = test.tester();
        this.documentId = document.orElse(null);
        this.enteredBy = enteredBy;
        this.enteredAt = enteredAt;
    }

    /** @throws IllegalStateException while it is not stored */
    long key() {
        if (id == null) {
            throw new IllegalStateException("a fit test that is not stored has no key");
        }
        return id;
    }

    long productKey() {
        return protectorId;
    }

    void withdraw(String reason, String by) {
        withdrawnReason = reason;
        withdrawnBy = by;
    }

    Optional<Long> documentKey() {
        return Optional.ofNullable(documentId);
    }

    long workerKey() {
        return workerId;
    }

    FitTest toFitTest(Product product, Optional<Document> document) {
        return new FitTest(
                key(),
                product,
                new NewFitTest(protectorId, size, testedOn, par.stripTrailingZeros(), percentile, method, tester),
                document,
                withdrawnReason);
    }
}
