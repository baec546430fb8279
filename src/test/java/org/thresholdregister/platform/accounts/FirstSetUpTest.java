package org.thresholdregister.platform.accounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.annotation.DirtiesContext;
import org.thresholdregister.platform.RegisterTest;
import org.thresholdregister.platform.accounts.AccountProblem.Field;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.SiteScope;

@RegisterTest
@DirtiesContext
class FirstSetUpTest {

    private static final NewAccount ADMINISTRATOR =
            new NewAccount("ada", "Ada Mint", "four green bottles", Role.ADMINISTRATOR, SiteScope.only(Set.of()));
    private static final NewAccount NURSE =
            new NewAccount("nora", "Nora Pell", "a kettle on every stove", Role.NURSE, SiteScope.all());

    @Autowired
    FirstSetUp setUp;

    @Autowired
    JdbcClient jdbc;

    @AfterEach
    void emptyTheRegister() {
        jdbc.sql("delete from user_account_site").update();
        jdbc.sql("delete from user_account").update();
    }

    private List<String> usernames() {
        return jdbc.sql("select username from user_account order by username")
                .query(String.class)
                .list();
    }

    @Test
    void aRegisterWithoutAccountsHasNoAccountAtAll() {
        assertThat(setUp.isOpen()).isTrue();
        assertThat(usernames()).isEmpty();
    }

    @Test
    void aWrongTokenStoresNothing() {
        var problems = setUp.complete("wrong", List.of(ADMINISTRATOR, NURSE));

        assertThat(problems).hasSize(2);
        assertThat(problems.getFirst()).extracting(AccountProblem::field).containsExactly(Field.SET_UP_TOKEN);
        assertThat(usernames()).isEmpty();
    }

    @Test
    void theTokenIsReadInAnyCaseAndClosesTheSetUpForGood() {
        var problems = setUp.complete(" " + setUp.token().toLowerCase(Locale.ROOT), List.of(ADMINISTRATOR, NURSE));

        assertThat(problems).containsExactly(List.of(), List.of());
        assertThat(usernames()).containsExactly("ada", "nora");
        assertThat(setUp.isOpen()).isFalse();
        assertThatThrownBy(() -> setUp.complete(setUp.token(), List.of(NURSE)))
                .isInstanceOf(IllegalStateException.class);
    }

    @Test
    void aProblemWithOneAccountStoresNeither() {
        var weak = new NewAccount("nora", "Nora Pell", "short", Role.NURSE, SiteScope.all());

        var problems = setUp.complete(setUp.token(), List.of(ADMINISTRATOR, weak));

        assertThat(problems.getFirst()).isEmpty();
        assertThat(problems.getLast()).extracting(AccountProblem::field).containsExactly(Field.PASSWORD);
        assertThat(usernames()).isEmpty();
        assertThat(setUp.isOpen()).isTrue();
    }

    @Test
    void oneUsernameForBothIsRefused() {
        var same = new NewAccount("ADA", "Nora Pell", "a kettle on every stove", Role.NURSE, SiteScope.all());

        var problems = setUp.complete(setUp.token(), List.of(ADMINISTRATOR, same));

        assertThat(problems.getLast()).extracting(AccountProblem::field).containsExactly(Field.USERNAME);
        assertThat(usernames()).isEmpty();
    }

    @Test
    void theTokenHoldsAHundredAndFortyRandomBits() {
        assertThat(setUp.token()).matches("([A-HJ-NP-Z2-9]{4}-){6}[A-HJ-NP-Z2-9]{4}");
    }
}
