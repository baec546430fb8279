package org.thresholdregister.core.calibration;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.regulation.Citation;

/**
 * Who makes tests.
 *
 * <p>Source: 29 CFR 1910.95(g)(3). An audiologist, otolaryngologist or other physician needs no certificate under it; a
 * technician is certified by the Council for Accreditation in Occupational Hearing Conservation or has shown competence,
 * except on a microprocessor audiometer, and is responsible to one of those professionals.
 *
 * @param name as tests name the tester
 * @param certificates of whatever time
 * @param hasSupervisor whether a professional is named to whom the tester is responsible
 */
public record Tester(String name, Qualification qualification, List<Certificate> certificates, boolean hasSupervisor) {

    public static final Citation SOURCE = new Citation("29 CFR 1910.95(g)(3)");

    /** @param expires its last day; one without does not end */
    public record Certificate(LocalDate issued, Optional<LocalDate> expires) {

        boolean holds(LocalDate day) {
            return !day.isBefore(issued)
                    && expires.map(last -> !day.isAfter(last)).orElse(true);
        }
    }

    public Tester {
        certificates = List.copyOf(certificates);
    }

    /** What entitles a person to test. */
    public enum Qualification {
        AUDIOLOGIST,
        OTOLARYNGOLOGIST,
        PHYSICIAN,
        CERTIFIED_TECHNICIAN,
        /** Has shown competence to a professional, without the certificate. */
        COMPETENT_TECHNICIAN,
        /** Neither: may operate microprocessor audiometers. */
        OTHER_TECHNICIAN;

        public boolean isTechnician() {
            return this == CERTIFIED_TECHNICIAN || this == COMPETENT_TECHNICIAN || this == OTHER_TECHNICIAN;
        }
    }

    /** Whether a certificate is what entitles this person to test on such a unit. */
    public boolean needsCertificate(Audiometer.Type unit) {
        return unit != Audiometer.Type.MICROPROCESSOR
                && (qualification == Qualification.CERTIFIED_TECHNICIAN
                        || qualification == Qualification.OTHER_TECHNICIAN);
    }

    /** Whether a certificate holds on a day. */
    public boolean isCertified(LocalDate day) {
        return certificates.stream().anyMatch(certificate -> certificate.holds(day));
    }

    /** The last day of the certificate that ran out last by a day; empty where none had. */
    public Optional<LocalDate> ranOut(LocalDate day) {
        return certificates.stream()
                .flatMap(certificate -> certificate.expires().stream())
                .filter(last -> last.isBefore(day))
                .max(Comparator.naturalOrder());
    }

    /** The last day on which a certificate holds, of those that have a last day; empty where one does not end. */
    public Optional<LocalDate> certifiedUntil() {
        return certificates.stream()
                        .anyMatch(certificate -> certificate.expires().isEmpty())
                ? Optional.empty()
                : certificates.stream()
                        .flatMap(certificate -> certificate.expires().stream())
                        .max(Comparator.naturalOrder());
    }

    /** Whether the tester is responsible to nobody on record, though a technician has to be. */
    public boolean lacksSupervisor() {
        return qualification.isTechnician() && !hasSupervisor;
    }
}
