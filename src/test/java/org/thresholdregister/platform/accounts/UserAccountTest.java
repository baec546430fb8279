package org.thresholdregister.platform.accounts;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.SiteScope;

class UserAccountTest {

    private static final Instant START = Instant.parse("2026-03-09T08:00:00Z");

    private final UserAccount account =
            new UserAccount("nora", "Nora Pell", "hash", Role.NURSE, SiteScope.all(), false);

    private void fail(int times, Instant when) {
        for (int i = 0; i < times; i++) {
            account.countFailureAt(when);
        }
    }

    @Test
    void fourWrongPasswordsDoNotLock() {
        fail(4, START);
        assertThat(account.isLockedAt(START)).isFalse();
    }

    @Test
    void theFifthLocksForAMinute() {
        fail(5, START);
        assertThat(account.isLockedAt(START.plusSeconds(59))).isTrue();
        assertThat(account.isLockedAt(START.plusSeconds(60))).isFalse();
    }

    @Test
    void eachFurtherOneDoublesThePauseUpToFifteenMinutes() {
        fail(5, START);
        Instant now = START;
        for (int minutes : new int[] {2, 4, 8, 15, 15}) {
            now = now.plus(Duration.ofMinutes(20));
            account.countFailureAt(now);
            Duration pause = Duration.ofMinutes(minutes);
            assertThat(account.isLockedAt(now.plus(pause).minusSeconds(1)))
                    .as("just under %d minutes", minutes)
                    .isTrue();
            assertThat(account.isLockedAt(now.plus(pause)))
                    .as("after %d minutes", minutes)
                    .isFalse();
        }
    }

    @Test
    void whatIsTriedDuringAPauseDoesNotLengthenIt() {
        fail(5, START);
        fail(100, START.plusSeconds(30));
        assertThat(account.isLockedAt(START.plusSeconds(60))).isFalse();
    }

    @Test
    void aSignInForgetsTheFailures() {
        fail(4, START);
        account.forgetFailures();
        fail(4, START);
        assertThat(account.isLockedAt(START)).isFalse();
    }

    @Test
    void aNewPasswordEndsThePause() {
        fail(5, START);
        account.setPasswordHash("another");
        assertThat(account.isLockedAt(START)).isFalse();
    }

    @Test
    void aDemonstrationAccountIsDisabledOutsideTheDemonstration() {
        var demo = new UserAccount("nurse", "Demo nurse", "hash", Role.NURSE, SiteScope.all(), true);
        assertThat(demo.toUser(true, START).isEnabled()).isTrue();
        assertThat(demo.toUser(false, START).isEnabled()).isFalse();
    }
}
