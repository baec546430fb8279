package org.thresholdregister.protection;

import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.annotation.Profile;
import org.springframework.context.event.EventListener;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.thresholdregister.core.attenuation.AppendixBCase;
import org.thresholdregister.core.attenuation.AttenuationMethod;
import org.thresholdregister.core.attenuation.LabelValues;
import org.thresholdregister.core.attenuation.OctaveAttenuation;
import org.thresholdregister.core.attenuation.ProtectorKind;
import org.thresholdregister.core.training.TrainingTopic;
import org.thresholdregister.platform.accounts.DemoAccounts;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.security.SiteScope;

/** Gives the demonstration invented protectors, fit tests and trainings, once, after the sample plant is there. */
@Component
@Profile(DemoAccounts.PROFILE)
class DemoProtection {

    private static final String WHO = "(demonstration)";

    /** Every so many have no protector on record. */
    private static final int WITHOUT_PROTECTOR = 13;

    /** Every so many were fit-tested. */
    private static final int FIT_TESTED = 9;

    /** Every so many missed the last training. */
    private static final int MISSED = 8;

    private final EntityManager entityManager;
    private final Catalogue catalogue;
    private final AuditTrail auditTrail;
    private final Clock clock;
    private final TransactionTemplate transaction;

    DemoProtection(
            EntityManager entityManager,
            Catalogue catalogue,
            AuditTrail auditTrail,
            Clock clock,
            PlatformTransactionManager transactionManager) {
        this.entityManager = entityManager;
        this.catalogue = catalogue;
        this.auditTrail = auditTrail;
        this.clock = clock;
        this.transaction = new TransactionTemplate(transactionManager);
    }

    @EventListener(ApplicationReadyEvent.class)
    @Order(Ordered.HIGHEST_PRECEDENCE + 20)
    void fillOnce() {
        transaction.executeWithoutResult(status -> {
            LocalDate today = LocalDate.now(clock);
            Map<Boolean, List<PersonRow>> bySiteGiven =
                    PersonRow.employed(entityManager, SiteScope.all(), today).stream()
                            .filter(person -> person.isEnrolledOn(today))
                            .collect(Collectors.partitioningBy(
                                    person -> !person.site().isEmpty()));
            List<PersonRow> people = bySiteGiven.getOrDefault(true, List.of());
            if (people.isEmpty() || !catalogue.all(SiteScope.all()).isEmpty()) {
                return;
            }
            Map<String, List<PersonRow>> bySite = people.stream().collect(Collectors.groupingBy(PersonRow::site));
            bySite.keySet().stream().sorted().forEach(site -> fill(site, bySite.getOrDefault(site, List.of()), today));
            train("", "", bySiteGiven.getOrDefault(false, List.of()), today);
            auditTrail.recordAs(
                    WHO, ProtectionAction.PROTECTOR_ADDED, "register", "", "protectors and trainings of the sample");
        });
    }

    private void fill(String site, List<PersonRow> people, LocalDate today) {
        long foam = add(
                site,
                "Fern foam plug",
                ProtectorKind.FORMABLE_PLUG,
                "one size",
                LabelValues.ofNrr(29)
                        .withSnr(BigDecimal.valueOf(33))
                        .withHml(BigDecimal.valueOf(32), BigDecimal.valueOf(29), BigDecimal.valueOf(27))
                        .withOctaves(new OctaveAttenuation(
                                decimals("32 34 36 36 36 41 43 46 47"),
                                decimals("4.1 4.0 3.8 3.0 2.6 3.0 3.2 3.4 3.8"))));
        long flanged = add(site, "Glasshouse flanged plug", ProtectorKind.OTHER_PLUG, "S, M, L", LabelValues.ofNrr(21));
        long muff = add(
                site,
                "Hollow muff",
                ProtectorKind.MUFF,
                "one size",
                LabelValues.ofNrr(24)
                        .withSnr(BigDecimal.valueOf(28))
                        .withHml(BigDecimal.valueOf(31), BigDecimal.valueOf(26), BigDecimal.valueOf(18)));
        add(site, "Brook moulded plug", ProtectorKind.CUSTOM_PLUG, "made for one person", LabelValues.ofNrr(17));
        catalogue.add(
                new ProductDetails(
                        site,
                        "Fern foam plug with Hollow muff",
                        ProtectorKind.DUAL,
                        "one size",
                        LabelValues.NONE,
                        Optional.of(new ProductDetails.Pair(foam, muff))),
                WHO,
                clock.instant());
        catalogue.choose(
                new MethodChoice(
                        site,
                        new AttenuationMethod.AppendixB(AppendixBCase.II),
                        "Noise is measured with dosimeters in dBA."),
                WHO,
                clock.instant());
        for (int i = 0; i < people.size(); i++) {
            if (i % WITHOUT_PROTECTOR != 0) {
                give(people.get(i), i, List.of(foam, foam, muff, flanged), today);
            }
        }
        people.stream()
                .collect(Collectors.groupingBy(PersonRow::department))
                .forEach((department, some) -> train(site, department, some, today));
    }

    private long add(String site, String name, ProtectorKind kind, String sizes, LabelValues label) {
        return catalogue.add(
                new ProductDetails(site, name, kind, sizes, label, Optional.empty()), WHO, clock.instant());
    }

    private void give(PersonRow person, int number, List<Long> products, LocalDate today) {
        int chosen = number % products.size();
        boolean hasSizes = chosen == products.size() - 1;
        String size = hasSizes ? List.of("S", "M", "L").get(number % 3) : "";
        LocalDate day = latest(today.minusDays(20L + number * 37L % 600), person.enrolledFrom());
        entityManager.persist(new StoredIssue(
                person.key(),
                new NewIssue(products.get(chosen), size, day, Optional.empty(), ""),
                WHO,
                clock.instant()));
        if (number % FIT_TESTED == 0) {
            entityManager.persist(new StoredFitTest(
                    person.key(),
                    new NewFitTest(
                            products.get(chosen),
                            size,
                            latest(today.minusDays(10L + number % 300), person.enrolledFrom()),
                            BigDecimal.valueOf(14L + number % 17),
                            84,
                            "field microphone in the ear",
                            "Demo nurse"),
                    Optional.empty(),
                    WHO,
                    clock.instant()));
        }
    }

    private static LocalDate latest(LocalDate day, Optional<LocalDate> first) {
        return first.filter(some -> some.isAfter(day)).orElse(day);
    }

    /** A training well over a year ago that everybody took part in, and one this year that some missed. */
    private void train(String site, String department, List<PersonRow> people, LocalDate today) {
        int shift = Math.floorMod(department.length() * 29, 120);
        LocalDate before = today.minusDays(410L + shift);
        LocalDate lately = today.minusDays(60L + shift);
        StoredSession first = session(site, before);
        StoredSession second = session(site, lately);
        for (int i = 0; i < people.size(); i++) {
            PersonRow person = people.get(i);
            if (person.isEnrolledOn(before)) {
                attend(first, person);
            }
            if (person.isEnrolledOn(lately) && i % MISSED != MISSED - 1) {
                attend(second, person);
            }
        }
    }

    private StoredSession session(String site, LocalDate day) {
        var session = new StoredSession(
                new NewSession(
                        site,
                        day,
                        EnumSet.allOf(TrainingTopic.class),
                        "Demo safety officer",
                        "en",
                        45,
                        "Slides, samples of plugs and muffs",
                        false),
                WHO,
                clock.instant());
        entityManager.persist(session);
        return session;
    }

    private void attend(StoredSession session, PersonRow person) {
        entityManager.persist(new StoredAttendance(session.key(), person.key(), WHO, clock.instant()));
    }

    private static List<BigDecimal> decimals(String text) {
        return Arrays.stream(text.split(" ")).map(BigDecimal::new).toList();
    }
}
