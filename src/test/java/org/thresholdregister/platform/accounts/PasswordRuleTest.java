package org.thresholdregister.platform.accounts;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Lengths and refusals follow NIST SP 800-63B-4, section 3.1.1.2. */
class PasswordRuleTest {

    private static final String FIFTEEN = "seven pale owls";

    @Test
    void fifteenCharactersAreEnough() {
        assertThat(FIFTEEN).hasSize(15);
        assertThat(PasswordRule.objection(FIFTEEN, "nora")).isEmpty();
    }

    @Test
    void fourteenCharactersAreTooFew() {
        assertThat(PasswordRule.objection(FIFTEEN.substring(1), "nora"))
                .hasValueSatisfying(objection -> assertThat(objection).contains("at least 15"));
    }

    @Test
    void charactersAreCountedAsPeopleCountThem() {
        String fourteen = "\uD83D\uDE42 abcdefghijkl";
        assertThat(fourteen.length()).isEqualTo(15);
        assertThat(PasswordRule.objection(fourteen, "nora")).isPresent();
        assertThat(PasswordRule.objection(fourteen + "m", "nora")).isEmpty();
    }

    @Test
    void aHundredAndTwentyEightCharactersAreAllowedAndOneMoreIsNot() {
        String longest = "correct as a long sentence can be, ".repeat(4).substring(0, 128);
        assertThat(PasswordRule.objection(longest, "nora")).isEmpty();
        assertThat(PasswordRule.objection(longest + "x", "nora")).isPresent();
    }

    @Test
    void spacesAndLettersOfAnyScriptAreAllowed() {
        assertThat(PasswordRule.objection("mañana será otro día", "nora")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "passwordpassword",
                "PasswordPassword",
                "123456789012345",
                "qwertyuiopasdfgh",
                "fernhollowglassworks",
                "aaaaaaaaaaaaaaaaa",
                "abc1abc1abc1abc1",
            })
    void whatOthersWouldTryFirstIsRefused(String password) {
        assertThat(PasswordRule.objection(password, "nora"))
                .hasValueSatisfying(objection -> assertThat(objection).contains("among the first"));
    }

    @Test
    void theUsernameIsKeptOutOfThePassword() {
        assertThat(PasswordRule.objection("the nora of winter", "nora")).isPresent();
        assertThat(PasswordRule.objection("the nora of winter", "ellen")).isEmpty();
    }

    @Test
    void theDemonstrationPasswordObeysTheRuleToo() {
        assertThat(PasswordRule.objection(DemoAccounts.PASSWORD, DemoAccounts.NURSE))
                .isEmpty();
    }
}
