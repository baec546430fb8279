package org.thresholdregister.protection;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.attenuation.LabelValues;
import org.thresholdregister.core.attenuation.OctaveAttenuation;
import org.thresholdregister.core.attenuation.ProtectorKind;

@Entity
@Table(name = "protector")
class StoredProduct {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "protector_seq")
    @SequenceGenerator(name = "protector_seq", sequenceName = "protector_seq", allocationSize = 10)
    private @Nullable Long id;

    private String site;
    private String name;

    @Enumerated(EnumType.STRING)
    private ProtectorKind kind;

    private String sizes;
    private @Nullable BigDecimal nrr;
    private @Nullable BigDecimal snr;
    private @Nullable BigDecimal high;
    private @Nullable BigDecimal medium;
    private @Nullable BigDecimal low;
    private @Nullable BigDecimal nrsMost;
    private @Nullable BigDecimal nrsFew;
    private String bandMeans;
    private String bandDeviations;
    private @Nullable Long plugId;
    private @Nullable Long muffId;
    private String enteredBy;
    private Instant enteredAt;
    private @Nullable LocalDate retiredOn;
    private String retiredReason = "";
    private String retiredBy = "";

    @SuppressWarnings("NullAway.Init")
    protected StoredProduct() {}

    StoredProduct(ProductDetails details, String enteredBy, Instant enteredAt) {
        site = details.site();
        name = details.name();
        kind = details.kind();
        sizes = details.sizes();
        LabelValues label = details.label();
        nrr = label.nrr().orElse(null);
        snr = label.snr().orElse(null);
        high = label.high().orElse(null);
        medium = label.medium().orElse(null);
        low = label.low().orElse(null);
        nrsMost = label.nrsMost().orElse(null);
        nrsFew = label.nrsFew().orElse(null);
        bandMeans = label.octaves().map(data -> packed(data.means())).orElse("");
        bandDeviations = label.octaves().map(data -> packed(data.deviations())).orElse("");
        plugId = details.pair().map(ProductDetails.Pair::plugKey).orElse(null);
        muffId = details.pair().map(ProductDetails.Pair::muffKey).orElse(null);
        this.enteredBy = enteredBy;
        this.enteredAt = enteredAt;
    }

    /** @throws IllegalStateException while it is not stored */
    long key() {
        if (id == null) {
            throw new IllegalStateException("a protector that is not stored has no key");
        }
        return id;
    }

    void retire(LocalDate day, String reason, String by) {
        retiredOn = day;
        retiredReason = reason;
        retiredBy = by;
    }

    Optional<LocalDate> retiredOn() {
        return Optional.ofNullable(retiredOn);
    }

    String retiredReason() {
        return retiredReason;
    }

    ProductDetails details() {
        Optional<OctaveAttenuation> octaves = bandMeans.isEmpty()
                ? Optional.empty()
                : Optional.of(new OctaveAttenuation(unpacked(bandMeans), unpacked(bandDeviations)));
        return new ProductDetails(
                site,
                name,
                kind,
                sizes,
                new LabelValues(
                        value(nrr),
                        value(snr),
                        value(high),
                        value(medium),
                        value(low),
                        value(nrsMost),
                        value(nrsFew),
                        octaves),
                plugId == null || muffId == null
                        ? Optional.empty()
                        : Optional.of(new ProductDetails.Pair(plugId, muffId)));
    }

    private static Optional<BigDecimal> value(@Nullable BigDecimal stored) {
        return Optional.ofNullable(stored).map(BigDecimal::stripTrailingZeros);
    }

    private static String packed(List<BigDecimal> values) {
        return values.stream().map(BigDecimal::toPlainString).collect(Collectors.joining(" "));
    }

    private static List<BigDecimal> unpacked(String values) {
        return Arrays.stream(values.split(" ")).map(BigDecimal::new).toList();
    }
}
