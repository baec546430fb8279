package org.thresholdregister.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.rulesets.Holiday;
import org.thresholdregister.rulesets.SiteRules;
import org.thresholdregister.rulesets.SiteRulesService;

/** A choice of rules judges the record again, from its day on; what was determined before is kept. */
@RegisterTest
class SiteRulesJudgingTest {

    @Autowired
    private SiteRulesService rules;

    @Autowired
    private BoardService board;

    @Autowired
    private WorkerRecordService records;

    @Autowired
    private TestImports files;

    @Autowired
    private JdbcTemplate jdbc;

    @BeforeEach
    void twoTestsAndAChange() {
        SignIn.as(Role.NURSE);
        files.store(
                "worker_id,birth_date,sex,site\nM-1,1980-05-05,M,Mill\nY-1,1980-05-05,M,Yard\n",
                TestImports.AUDIOGRAM_COLUMNS
                        + TestImports.test("M-1", "2023-02-01", "baseline", 10, 10)
                        + TestImports.test("M-1", "2024-02-01", "annual", 10, 10)
                        + TestImports.test("M-1", "2025-02-03", "annual", 40, 10)
                        + TestImports.test("Y-1", "2023-02-01", "baseline", 10, 10)
                        + TestImports.test("Y-1", "2025-02-03", "annual", 40, 10),
                "");
    }

    private List<Map<String, Object>> determinations(String workerId) {
        SignIn.as(Role.NURSE);
        board.counts();
        return jdbc.queryForList(
                "select d.test_date, d.rule_set, d.outcome, d.recordable, d.notify_by from determination d join worker w"
                        + " on w.id = d.worker_id where w.worker_id = ? and d.ear = 'left' order by d.test_date",
                workerId);
    }

    private void choose(String site, String from, String ruleSet) {
        SignIn.as(Role.ADMINISTRATOR);
        assertThat(rules.choose(new SiteRules.Choice(
                        site, LocalDate.parse(from), ruleSet, AgeCorrection.ON, Map.of(), "a mine since then")))
                .isEmpty();
    }

    @Test
    void testsFromItsDayOnAreJudgedByIt() {
        assertThat(determinations("M-1")).extracting(row -> row.get("rule_set")).containsOnly("osha");

        choose("Mill", "2025-02-03", "msha");

        assertThat(determinations("M-1"))
                .extracting(row -> row.get("test_date") + " " + row.get("rule_set") + " " + row.get("outcome") + " "
                        + row.get("notify_by"))
                .containsExactly(
                        "2023-02-01 osha baseline null",
                        "2024-02-01 osha no-shift null",
                        "2025-02-03 msha confirmed 2025-02-17");
        assertThat(determinations("Y-1")).extracting(row -> row.get("rule_set")).containsOnly("osha");
        SignIn.as(Role.SAFETY_OFFICER);
        WorkerRecord record = records.open("M-1").orElseThrow();
        assertThat(record.ruleSet().word()).isEqualTo("msha");
        assertThat(record.judgement().determinations().getLast().ruleSet().word())
                .isEqualTo("msha");
    }

    @Test
    void whatWasDeterminedBeforeIsKept() {
        determinations("M-1");
        choose("Mill", "2025-02-03", "msha");
        determinations("M-1");

        assertThat(jdbc.queryForList(
                        "select rule_set, outcome from determination_history f join worker w on w.id = f.worker_id"
                                + " where w.worker_id = 'M-1' and f.ear = 'left'"))
                .containsExactly(Map.of("rule_set", "osha", "outcome", "confirmed"));
    }

    @Test
    void aHolidayMovesWhatIsCountedInWorkingDays() {
        choose("", "2025-01-01", "msha");
        assertThat(determinations("Y-1").getLast().get("notify_by")).hasToString("2025-02-17");

        SignIn.as(Role.ADMINISTRATOR);
        rules.addHoliday(new Holiday(LocalDate.parse("2025-02-10"), "Founders' day"));
        assertThat(determinations("Y-1").getLast().get("notify_by")).hasToString("2025-02-18");

        SignIn.as(Role.ADMINISTRATOR);
        rules.removeHoliday(LocalDate.parse("2025-02-10"));
        assertThat(determinations("Y-1").getLast().get("notify_by")).hasToString("2025-02-17");
    }
}
