package org.thresholdregister.audiograms;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.HearingLevel;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.audiometry.Threshold.NotTested.Reason;
import org.thresholdregister.core.validity.TestConditions;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.security.Role;

@RegisterTest
@Transactional
class TestStoreTest {

    private static final TestFacts NO_FACTS =
            new TestFacts(Optional.empty(), Optional.empty(), "", "", "", "", "", TestConditions.NO_REPEAT);

    @Autowired
    private TestStore tests;

    @Autowired
    private TestImports files;

    @Autowired
    private EntityManager entityManager;

    @Autowired
    private JdbcTemplate jdbc;

    private long worker;
    private long batch;

    @BeforeEach
    void aWorker() {
        SignIn.as(Role.NURSE);
        files.store("worker_id,birth_date,sex\n1,,\n", "", "");
        worker = id("worker");
        batch = id("import_batch");
    }

    private long id(String table) {
        return (Long) jdbc.queryForList("select id from " + table).getFirst().get("id");
    }

    private static List<Threshold> everyThreshold() {
        List<Threshold> all = new ArrayList<>();
        for (int decibels = HearingLevel.LOWEST_DB; decibels <= HearingLevel.HIGHEST_DB; decibels++) {
            all.add(Threshold.measured(decibels));
            all.add(Threshold.noResponseAt(decibels));
        }
        all.add(Threshold.noResponse());
        for (Reason reason : Reason.values()) {
            all.add(Threshold.notTested(reason));
        }
        assertThat(all).hasSize(2 * 131 + 1 + 3);
        return all;
    }

    private RecordedTest storedAndReadAgain(Audiogram audiogram, TestFacts facts) {
        long key = tests.add(worker, audiogram, facts, batch);
        entityManager.flush();
        entityManager.clear();
        return tests.ofWorkers(List.of(worker)).stream()
                .filter(test -> test.key() == key)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyThresholdComesBackAsItWasFromEveryPlace() {
        List<Threshold> all = everyThreshold();
        Random random = new Random(20260309);
        for (int i = 0; i < all.size(); i++) {
            var audiogram = new Audiogram.Builder(LocalDate.of(2020, 1, 1).plusDays(i), TestPurpose.ANNUAL);
            // Each value stands alone somewhere and beside random others.
            for (Ear ear : Ear.values()) {
                for (Frequency frequency : Frequency.values()) {
                    audiogram.set(ear, frequency, all.get(random.nextInt(all.size())));
                }
            }
            Ear ear = Ear.values()[i % 2];
            Frequency frequency = Frequency.values()[i / 2 % 7];
            Audiogram given = audiogram.set(ear, frequency, all.get(i)).build();

            assertThat(storedAndReadAgain(given, NO_FACTS).audiogram()).isEqualTo(given);
        }
    }

    @Test
    void anEarWithoutASingleThresholdComesBackEmpty() {
        Audiogram oneEar = new Audiogram.Builder(LocalDate.of(2020, 1, 1), TestPurpose.ANNUAL)
                .set(Ear.RIGHT, Frequency.HZ_500, Threshold.measured(0))
                .build();
        Audiogram nothing = new Audiogram.Builder(LocalDate.of(2020, 1, 2), TestPurpose.OTHER).build();

        assertThat(storedAndReadAgain(oneEar, NO_FACTS).audiogram()).isEqualTo(oneEar);
        assertThat(storedAndReadAgain(nothing, NO_FACTS).audiogram()).isEqualTo(nothing);
    }

    @Test
    void columnsHoldTheNotationOfTheFiles() {
        Audiogram audiogram = new Audiogram.Builder(LocalDate.of(2020, 1, 1), TestPurpose.RETEST)
                .set(Ear.LEFT, Frequency.HZ_500, Threshold.measured(-10))
                .set(Ear.LEFT, Frequency.HZ_8000, Threshold.noResponseAt(95))
                .set(Ear.RIGHT, Frequency.HZ_500, Threshold.noResponse())
                .set(Ear.RIGHT, Frequency.HZ_2000, Threshold.notTested(Reason.DID_NOT_TEST))
                .set(Ear.RIGHT, Frequency.HZ_8000, Threshold.notTested(Reason.COULD_NOT_TEST))
                .build();
        storedAndReadAgain(audiogram, NO_FACTS);

        Map<String, Object> row = jdbc.queryForMap("select * from audiogram");

        assertThat(row)
                .containsEntry("left_500", "-10")
                .containsEntry("left_1000", null)
                .containsEntry("left_8000", ">95")
                .containsEntry("right_500", "NR")
                .containsEntry("right_2000", "DNT")
                .containsEntry("right_8000", "CNT")
                .containsEntry("purpose", "retest");
    }

    @Test
    void factsComeBackAsTheyWere() {
        Audiogram audiogram = new Audiogram.Builder(LocalDate.of(2020, 1, 1), TestPurpose.ANNUAL).build();
        Audiogram next = new Audiogram.Builder(LocalDate.of(2021, 1, 1), TestPurpose.ANNUAL).build();
        TestFacts facts = new TestFacts(
                Optional.of(new BigDecimal("14.25")),
                Optional.of(false),
                "B. Orrin",
                "A-1",
                "P-9",
                "",
                "cold; tired",
                new PerEar<>(Threshold.measured(15), Threshold.noResponseAt(95)));

        assertThat(storedAndReadAgain(audiogram, facts).facts()).isEqualTo(facts);
        assertThat(storedAndReadAgain(next, NO_FACTS).facts()).isEqualTo(NO_FACTS);
    }
}
