package org.thresholdregister.platform.accounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.thresholdregister.Application;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.SignedInUser;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.platform.storage.StartRefusedException;

/** Starts the application as its launcher does, on one folder, with and without the demonstration. */
class DemoAccountsTest {

    @TempDir
    Path folder;

    private ConfigurableApplicationContext start(String... more) {
        var arguments = new ArrayList<>(List.of("--register.data=" + folder, "--server.port=0"));
        arguments.addAll(List.of(more));
        return Application.serve(arguments.toArray(String[]::new));
    }

    private static SignedInUser load(ConfigurableApplicationContext context, String username) {
        return (SignedInUser) context.getBean(UserDetailsService.class).loadUserByUsername(username);
    }

    @Test
    void theDemonstrationHasThreeAccountsWhichAreDeadOutsideIt() {
        try (var demo = start("--spring.profiles.active=demo")) {
            assertThat(load(demo, "nurse").role()).isEqualTo(Role.NURSE);
            assertThat(load(demo, "officer").role()).isEqualTo(Role.SAFETY_OFFICER);
            assertThat(load(demo, "manager").role()).isEqualTo(Role.PLANT_MANAGER);
            for (String username : List.of("nurse", "officer", "manager")) {
                var user = load(demo, username);
                assertThat(user.isEnabled()).as(username).isTrue();
                assertThat(user.scope()).as(username).isEqualTo(SiteScope.all());
                assertThat(demo.getBean(PasswordEncoder.class).matches(DemoAccounts.PASSWORD, user.getPassword()))
                        .as(username)
                        .isTrue();
            }
            assertThat(demo.getBean(FirstSetUp.class).isOpen()).isFalse();
        }
        try (var real = start()) {
            assertThat(load(real, "nurse").isEnabled()).isFalse();
            assertThat(real.getBean(FirstSetUp.class).isOpen()).isTrue();
        }
    }

    @Test
    void theDemonstrationDoesNotStartOnARealRegister() {
        try (var real = start()) {
            var setUp = real.getBean(FirstSetUp.class);
            var administrator = new NewAccount(
                    "ada", "Ada Mint", "four green bottles", Role.ADMINISTRATOR, SiteScope.only(Set.of()));
            assertThat(setUp.complete(setUp.token(), List.of(administrator))).containsExactly(List.of());
        }
        assertThatThrownBy(() -> start("--spring.profiles.active=demo").close())
                .hasStackTraceContaining(StartRefusedException.class.getName());
        try (var real = start()) {
            var accounts = real.getBean(UserAccountRepository.class);
            assertThat(accounts.existsByUsername("ada")).isTrue();
            assertThat(accounts.existsByDemo(true)).isFalse();
        }
    }
}
