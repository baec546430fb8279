package org.thresholdregister.exposure;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.duty.OpenDuty;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.protection.WorkerProtectionService;

/** Noise on the register, with roles and sites. Today is 9 March 2026. */
@RegisterTest
class NoiseServiceTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 9);
    private static final NoiseSubject SAWS = new NoiseSubject(NoiseSubject.Kind.GROUP, "Mill", "Saws");

    @Autowired
    private TestImports files;

    @Autowired
    private NoiseService noise;

    @Autowired
    private ExposureDuties duties;

    @Autowired
    private WorkerProtectionService protection;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private JdbcTemplate jdbc;

    @BeforeEach
    void twoSites() {
        SignIn.as(Role.NURSE);
        files.store(Measurements.ROSTER, "", "");
    }

    private void measure(NoiseSubject subject, LocalDate day, double dba) {
        assertThat(noise.enter(Measurements.of(subject, day, dba))).isEmpty();
    }

    private PlaceRecord saws() {
        return noise.place(SAWS).orElseThrow();
    }

    private List<OpenDuty> duties(LocalDate until) {
        return transaction.execute(status -> duties.open(SiteScope.all(), TODAY, until));
    }

    @Test
    void aMeasurementSpeaksForItsGroupAndProposesWhoIsNotInTheProgramme() {
        measure(SAWS, LocalDate.of(2026, 1, 15), 91);

        assertThat(saws().people()).extracting(worker -> worker.workerId()).containsExactly("M-1", "M-2");
        ProgrammeProposal proposal = noise.overview().proposals().getFirst();
        assertThat(noise.overview().proposals()).hasSize(1);
        assertThat(proposal.worker().workerId()).isEqualTo("M-2");
        assertThat(proposal.on()).as("no earlier than the hire").isEqualTo(LocalDate.of(2026, 2, 1));
        assertThat(noise.ofWorker("M-2").orElseThrow().proposal()).contains(proposal);
        assertThat(noise.ofWorker("M-3").orElseThrow().today()).isEmpty();
        assertThat(jdbc.queryForObject("select count(*) from audit_event where action = 'NOISE_MEASURED'", Long.class))
                .isEqualTo(1);
    }

    @Test
    void theLatestMeasurementCountsAndTheMoreParticularOfOneDay() {
        measure(SAWS, LocalDate.of(2026, 1, 15), 91);
        measure(SAWS, LocalDate.of(2026, 2, 15), 83);
        assertThat(noise.overview().proposals()).isEmpty();

        measure(new NoiseSubject(NoiseSubject.Kind.WORKER, "Mill", "M-2"), LocalDate.of(2026, 2, 15), 88);
        assertThat(saws().people()).extracting(worker -> worker.workerId()).containsExactly("M-1");
        assertThat(noise.overview().proposals())
                .extracting(ProgrammeProposal::on)
                .containsExactly(LocalDate.of(2026, 2, 15));
    }

    @Test
    void everybodyAtTheActionLevelIsToBeToldUntilTheyWere() {
        measure(SAWS, LocalDate.of(2026, 3, 1), 85);
        assertThat(duties(LocalDate.of(2026, 3, 15))).isEmpty();
        OpenDuty duty = duties(LocalDate.of(2026, 3, 16)).getFirst();
        assertThat(duty.subject()).isEqualTo(new OpenDuty.Subject.OfThing("Saws, 2 people"));
        assertThat(duty.due()).isEqualTo(LocalDate.of(2026, 3, 16));

        long key = saws().current().orElseThrow().key();
        assertThat(noise.tell(key, new Told(TODAY.plusDays(1), HowTold.LETTER)))
                .contains(NoiseEntryProblem.IN_THE_FUTURE);
        assertThat(noise.tell(key, new Told(LocalDate.of(2026, 2, 28), HowTold.LETTER)))
                .contains(NoiseEntryProblem.TOO_EARLY);
        assertThat(noise.tell(key, new Told(TODAY, HowTold.MEETING))).isEmpty();
        assertThat(saws().untold()).isEmpty();
        assertThat(duties(TODAY.plusYears(1))).isEmpty();
        assertThat(noise.ofWorker("M-2").orElseThrow().told()).contains(new Told(TODAY, HowTold.MEETING));
        assertThat(noise.tell(key, new Told(TODAY, HowTold.MEETING))).contains(NoiseEntryProblem.NOT_OPEN);
        assertThat(jdbc.queryForList(
                        "select subject_id from audit_event where action = 'NOISE_RESULT_TOLD' order by subject_id",
                        String.class))
                .containsExactly("M-1", "M-2");
    }

    @Test
    void underTheActionLevelNobodyIsToBeTold() {
        measure(SAWS, LocalDate.of(2026, 3, 1), 84.9);
        assertThat(saws().untold()).isEmpty();
        assertThat(duties(TODAY.plusYears(1))).isEmpty();
    }

    @Test
    void aWithdrawnMeasurementDoesNotCountAndStaysReadable() {
        measure(SAWS, LocalDate.of(2026, 1, 15), 91);
        measure(SAWS, LocalDate.of(2026, 2, 15), 99);
        long wrong = saws().current().orElseThrow().key();
        assertThat(noise.withdraw(wrong, " ")).contains(NoiseEntryProblem.TEXT_MISSING);
        assertThat(noise.withdraw(wrong, "the wrong group")).isEmpty();

        assertThat(saws().current().orElseThrow().details().measuredOn()).isEqualTo(LocalDate.of(2026, 1, 15));
        assertThat(saws().history()).hasSize(2);
        assertThat(saws().history().getLast().withdrawal().orElseThrow().reason())
                .isEqualTo("the wrong group");
        assertThat(noise.withdraw(wrong, "again")).contains(NoiseEntryProblem.NOT_OPEN);
    }

    @Test
    void whatIsNotOfTheRosterOrOfTheUsersSitesIsRefused() {
        assertThat(noise.enter(Measurements.group("Mill", "Lathes", TODAY, 90)))
                .contains(NoiseEntryProblem.NOBODY_OF_THAT_NAME);
        assertThat(noise.enter(Measurements.group("Quarry", "Saws", TODAY, 90)))
                .contains(NoiseEntryProblem.UNKNOWN_SITE);
        assertThat(noise.enter(Measurements.group("Mill", "Saws", TODAY.plusDays(1), 90)))
                .contains(NoiseEntryProblem.IN_THE_FUTURE);
        measure(SAWS, TODAY, 91);
        long key = saws().current().orElseThrow().key();

        SignIn.as(Role.NURSE, "Yard");
        assertThat(noise.enter(Measurements.group("Mill", "Saws", TODAY, 90))).contains(NoiseEntryProblem.UNKNOWN_SITE);
        assertThat(noise.place(SAWS)).isEmpty();
        assertThat(noise.ofWorker("M-1")).isEmpty();
        assertThat(noise.withdraw(key, "not mine")).contains(NoiseEntryProblem.NOT_OPEN);
        assertThat(noise.tell(key, new Told(TODAY, HowTold.LETTER))).contains(NoiseEntryProblem.NOT_OPEN);
        assertThat(noise.overview().places())
                .extracting(place -> place.subject().name())
                .containsExactly("Cranes");
    }

    @Test
    void protectorsAreEstimatedForWhatWasMeasured() {
        assertThat(protection.of("M-1").orElseThrow().noise().aWeighted().orElseThrow())
                .isEqualByComparingTo("92.5");
        measure(SAWS, LocalDate.of(2026, 3, 1), 96.25);
        assertThat(protection.of("M-1").orElseThrow().noise().aWeighted().orElseThrow())
                .isEqualByComparingTo("96.25");
    }
}
