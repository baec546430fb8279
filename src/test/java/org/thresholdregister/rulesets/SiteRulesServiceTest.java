package org.thresholdregister.rulesets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.test.context.event.ApplicationEvents;
import org.springframework.test.context.event.RecordApplicationEvents;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.judging.RulesInForce;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.rules.Setting;
import org.thresholdregister.platform.security.Role;

/** Which rule set a site answers to from when on, over the database. */
@RegisterTest
@RecordApplicationEvents
class SiteRulesServiceTest {

    private static final LocalDate NEW_YEAR = LocalDate.parse("2026-01-01");

    @Autowired
    private SiteRulesService rules;

    @Autowired
    private SiteRulesStore store;

    @Autowired
    private PlatformTransactionManager transactions;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private ApplicationEvents events;

    @BeforeEach
    void anAdministrator() {
        SignIn.as(Role.ADMINISTRATOR);
    }

    private static RuleSet ruleSet(String word) {
        return RuleSets.find(word).orElseThrow();
    }

    private static SiteRules.Choice choice(String site, LocalDate from, String ruleSet) {
        return new SiteRules.Choice(site, from, ruleSet, AgeCorrection.ON, Map.of(), "the customer asks for it");
    }

    private void choose(String site, LocalDate from, String ruleSet) {
        assertThat(rules.choose(choice(site, from, ruleSet))).isEmpty();
    }

    private RulesInForce inForce(String site) {
        return new TransactionTemplate(transactions)
                .execute(status -> store.all().of(site));
    }

    private RuleSet inForce(String site, LocalDate day) {
        return inForce(site).on(day).ruleSet();
    }

    private long changes() {
        return events.stream(RulesChanged.class).count();
    }

    @Test
    void withoutAnyChoiceEverySiteAnswersToOshaWithTheAllowanceForAge() {
        assertThat(rules.chosen()).isEmpty();
        for (String site : List.of("", "Mill")) {
            assertThat(inForce(site)).isEqualTo(RulesInForce.always(RuleSets.OSHA, AgeCorrection.ON));
        }
    }

    @Test
    void aChoiceCountsFromItsDayOnAndForItsSiteOnly() {
        choose("Mill", NEW_YEAR, "niosh");
        assertThat(inForce("Mill", NEW_YEAR.minusDays(1))).isEqualTo(RuleSets.OSHA);
        assertThat(inForce("Mill", NEW_YEAR)).isEqualTo(ruleSet("niosh"));
        assertThat(inForce("Yard", NEW_YEAR)).isEqualTo(RuleSets.OSHA);
        assertThat(inForce("mill", NEW_YEAR)).as("as spelled in the roster").isEqualTo(RuleSets.OSHA);
        assertThat(inForce("", NEW_YEAR)).isEqualTo(RuleSets.OSHA);
    }

    @Test
    void anEmptySiteStandsForEverySiteWithoutAChoiceOfItsOwn() {
        choose("", NEW_YEAR, "msha");
        choose("Mill", NEW_YEAR.plusMonths(6), "niosh");
        assertThat(inForce("Yard", NEW_YEAR)).isEqualTo(ruleSet("msha"));
        assertThat(inForce("", NEW_YEAR)).isEqualTo(ruleSet("msha"));
        assertThat(inForce("Mill", NEW_YEAR))
                .as("a site with a choice of its own answers to that alone")
                .isEqualTo(RuleSets.OSHA);
        assertThat(inForce("Mill", NEW_YEAR.plusMonths(6))).isEqualTo(ruleSet("niosh"));
    }

    @Test
    void ofSeveralChoicesOfOneDayTheLastCountsAndAllAreKept() {
        choose("Mill", NEW_YEAR, "niosh");
        choose("Mill", NEW_YEAR, "dod");
        choose("Mill", NEW_YEAR, "fra");
        assertThat(inForce("Mill", NEW_YEAR)).isEqualTo(ruleSet("fra"));
        assertThat(inForce("Mill").choices()).hasSize(2);
        assertThat(rules.chosen()).extracting(chosen -> chosen.ruleSet().word()).containsExactly("niosh", "dod", "fra");
    }

    @Test
    void choicesAreListedBySiteAndDayInWhateverOrderTheyWereMade() {
        choose("Yard", NEW_YEAR, "niosh");
        choose("Mill", NEW_YEAR.plusYears(1), "osha");
        choose("Mill", NEW_YEAR, "msha");
        choose("", NEW_YEAR, "dod");
        assertThat(rules.chosen())
                .extracting(
                        SiteRules::site,
                        SiteRules::from,
                        chosen -> chosen.ruleSet().word())
                .containsExactly(
                        tuple("", NEW_YEAR, "dod"),
                        tuple("Mill", NEW_YEAR, "msha"),
                        tuple("Mill", NEW_YEAR.plusYears(1), "osha"),
                        tuple("Yard", NEW_YEAR, "niosh"));
        assertThat(inForce("Mill", NEW_YEAR.plusMonths(11))).isEqualTo(ruleSet("msha"));
        assertThat(inForce("Mill", NEW_YEAR.plusYears(1))).isEqualTo(RuleSets.OSHA);
    }

    @Test
    void everythingAboutAChoiceIsKept() {
        var choice = new SiteRules.Choice(
                "Mill",
                NEW_YEAR,
                "dod",
                AgeCorrection.OFF,
                Map.of("retest-days", 45, "early-warning-db", 20),
                "Per contract 17, §4: “as the customer says”\nsecond line");
        assertThat(rules.choose(choice)).isEmpty();
        assertThat(rules.chosen()).singleElement().satisfies(chosen -> {
            assertThat(chosen.ruleSet())
                    .isEqualTo(RuleSets.with(ruleSet("dod"), choice.settings()))
                    .isNotEqualTo(ruleSet("dod"));
            assertThat(chosen.ruleSet().settings()).extracting(Setting::value).containsExactly(45, 30, 10, 20);
            assertThat(chosen.ageCorrection()).isEqualTo(AgeCorrection.OFF);
            assertThat(chosen.reason()).isEqualTo(choice.reason());
            assertThat(chosen.chosenBy()).isEqualTo("test-administrator");
        });
        RulesInForce.Choice inForce = inForce("Mill").on(NEW_YEAR);
        assertThat(inForce.ruleSet().retest().orElseThrow().days()).isEqualTo(45);
        assertThat(inForce.ageCorrection()).isEqualTo(AgeCorrection.OFF);
    }

    @Test
    void aChoiceNeedsAReasonAndARuleSet() {
        assertThat(rules.choose(new SiteRules.Choice("Mill", NEW_YEAR, "niosh", AgeCorrection.ON, Map.of(), " ")))
                .contains("Say why: the reason stays with the choice.");
        assertThat(rules.choose(choice("Mill", NEW_YEAR, "gosha"))).contains("There is no rule set gosha.");
        nothingIsStored();
    }

    private void nothingIsStored() {
        assertThat(rules.chosen()).isEmpty();
        assertThat(changes()).isZero();
        assertThat(jdbc.queryForObject("select count(*) from audit_event", Long.class))
                .isZero();
    }

    @ParameterizedTest
    @CsvSource({"niosh, retest-days, 30", "niosh, notice-days, 0", "dod, early-warning-db, 61", "osha, notice-days, 30"
    })
    void aSettingThatDoesNotFitIsSaidAndNotStored(String ruleSet, String setting, int value) {
        Optional<String> objection = rules.choose(new SiteRules.Choice(
                "Mill", NEW_YEAR, ruleSet, AgeCorrection.ON, Map.of(setting, value), "our copy says so"));
        assertThat(objection)
                .hasValueSatisfying(says -> assertThat(says)
                        .startsWith("That does not fit: ")
                        .contains(setting)
                        .endsWith("."));
        nothingIsStored();
    }

    @Test
    void aTextThatDoesNotFitIsSaidAndNotStored() {
        assertThat(rules.choose(choice("x".repeat(201), NEW_YEAR, "osha"))).isPresent();
        assertThat(rules.choose(
                        new SiteRules.Choice("Mill", NEW_YEAR, "osha", AgeCorrection.ON, Map.of(), "y".repeat(2001))))
                .isPresent();
        nothingIsStored();
        assertThat(rules.choose(new SiteRules.Choice(
                        "x".repeat(200), NEW_YEAR, "osha", AgeCorrection.ON, Map.of(), "y".repeat(2000))))
                .isEmpty();
        assertThat(rules.chosen()).hasSize(1);
    }

    @Test
    void aChoiceIsOnTheAuditTrailAndHasEverythingJudgedAgain() {
        rules.choose(new SiteRules.Choice(
                "Mill", NEW_YEAR, "fra", AgeCorrection.OFF, Map.of("notice-days", 45), "a private reason"));
        choose("", NEW_YEAR, "osha");
        assertThat(jdbc.queryForList(
                        "select actor || '|' || action || '|' || subject_type || '|' || subject_id || '|' || detail"
                                + " from audit_event order by id",
                        String.class))
                .containsExactly(
                        "test-administrator|RULE_SET_CHOSEN|rule-set|fra|Mill from 2026-01-01, age correction off, with"
                                + " settings {notice-days=45}",
                        "test-administrator|RULE_SET_CHOSEN|rule-set|osha|every other site from 2026-01-01, age"
                                + " correction on");
        assertThat(changes()).isEqualTo(2);
    }

    @Test
    void holidaysAreListedByDayAndReachEverySite() {
        choose("Mill", NEW_YEAR, "msha");
        rules.addHoliday(new Holiday(LocalDate.parse("2026-12-25"), "Christmas Day"));
        rules.addHoliday(new Holiday(LocalDate.parse("2026-07-03"), "Independence Day"));
        assertThat(rules.holidays()).extracting(Holiday::name).containsExactly("Independence Day", "Christmas Day");
        for (String site : List.of("", "Mill", "Yard")) {
            assertThat(inForce(site).holidays().days())
                    .containsExactlyInAnyOrder(LocalDate.parse("2026-12-25"), LocalDate.parse("2026-07-03"));
        }
    }

    @Test
    void aHolidayIsGivenAnotherNameAndTakenAway() {
        LocalDate day = LocalDate.parse("2026-07-03");
        rules.addHoliday(new Holiday(day, "Independance Day"));
        rules.addHoliday(new Holiday(day, "Independence Day"));
        assertThat(rules.holidays()).containsExactly(new Holiday(day, "Independence Day"));
        rules.removeHoliday(day);
        assertThat(rules.holidays()).isEmpty();
        rules.removeHoliday(day);
        assertThat(jdbc.queryForList(
                        "select action || '|' || subject_id || '|' || detail from audit_event order by id",
                        String.class))
                .as("taking away what is not there leaves no trace")
                .containsExactly(
                        "HOLIDAY_ADDED|2026-07-03|Independance Day",
                        "HOLIDAY_ADDED|2026-07-03|Independence Day",
                        "HOLIDAY_REMOVED|2026-07-03|");
        assertThat(changes()).isEqualTo(3);
    }

    @Test
    void aHolidayHasAName() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Holiday(NEW_YEAR, " "));
        assertThatIllegalArgumentException().isThrownBy(() -> new Holiday(NEW_YEAR, "x".repeat(101)));
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void onlyTheAdministratorChoosesAndWhoSeesRecordsSeesTheChoice(Role role) {
        choose("Mill", NEW_YEAR, "niosh");
        rules.addHoliday(new Holiday(NEW_YEAR, "New Year"));
        SignIn.as(role);
        if (EnumSet.of(Role.NURSE, Role.SAFETY_OFFICER, Role.ADMINISTRATOR).contains(role)) {
            assertThat(rules.chosen()).hasSize(1);
            assertThat(rules.holidays()).hasSize(1);
        } else {
            assertThatThrownBy(rules::chosen).isInstanceOf(AccessDeniedException.class);
            assertThatThrownBy(rules::holidays).isInstanceOf(AccessDeniedException.class);
        }
        if (role != Role.ADMINISTRATOR) {
            assertThatThrownBy(() -> rules.choose(choice("Mill", NEW_YEAR, "osha")))
                    .isInstanceOf(AccessDeniedException.class);
            assertThatThrownBy(() -> rules.addHoliday(new Holiday(NEW_YEAR, "Mine")))
                    .isInstanceOf(AccessDeniedException.class);
            assertThatThrownBy(() -> rules.removeHoliday(NEW_YEAR)).isInstanceOf(AccessDeniedException.class);
            SignIn.as(Role.ADMINISTRATOR);
            assertThat(rules.chosen()).hasSize(1);
            assertThat(rules.holidays()).containsExactly(new Holiday(NEW_YEAR, "New Year"));
        }
    }
}
