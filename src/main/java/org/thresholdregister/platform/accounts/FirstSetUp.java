package org.thresholdregister.platform.accounts;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import org.springframework.core.env.Environment;
import org.springframework.core.env.Profiles;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.thresholdregister.platform.accounts.AccountProblem.Field;

/**
 * Makes the first accounts of a register that has none. Whoever does it shows the token that stands on the console, and
 * so has the machine in hand. Once an account exists there is no first set-up any more.
 */
@Service
public class FirstSetUp {

    private static final String ACTOR = "(first set-up)";
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789";
    private static final int TOKEN_LETTERS = 28;

    private final UserAccountRepository accounts;
    private final AccountBook book;
    private final TransactionTemplate transaction;
    private final boolean demo;
    private final String token = randomToken();

    FirstSetUp(
            UserAccountRepository accounts,
            AccountBook book,
            PlatformTransactionManager transactionManager,
            Environment environment) {
        this.accounts = accounts;
        this.book = book;
        this.transaction = new TransactionTemplate(transactionManager);
        this.demo = environment.acceptsProfiles(Profiles.of(DemoAccounts.PROFILE));
    }

    /** Whether the register still has no account of its own, outside a demonstration. */
    public boolean isOpen() {
        return !demo && !accounts.existsByDemo(false);
    }

    /**
     * Stores the first accounts, all or none.
     *
     * @return for each account what stands against it, in the same order; empty lists where all are stored. A wrong
     *     token is told of the first.
     * @throws IllegalStateException where the register has accounts already
     */
    public synchronized List<List<AccountProblem>> complete(String typedToken, List<NewAccount> first) {
        if (!isOpen()) {
            throw new IllegalStateException("the register is set up already");
        }
        if (!isToken(typedToken)) {
            var problems = new ArrayList<List<AccountProblem>>();
            first.forEach(account -> problems.add(List.of()));
            problems.set(0, List.of(new AccountProblem(Field.SET_UP_TOKEN, "This is not the token on the console.")));
            return problems;
        }
        var usernames = new HashSet<String>();
        var problems = new ArrayList<List<AccountProblem>>();
        for (NewAccount account : first) {
            var own = new ArrayList<>(book.problemsOf(account));
            if (!usernames.add(AccountBook.normalUsername(account.username()))) {
                own.add(new AccountProblem(Field.USERNAME, "This username stands twice."));
            }
            problems.add(own);
        }
        if (problems.stream().allMatch(List::isEmpty)) {
            transaction.executeWithoutResult(status -> first.forEach(account -> book.store(account, false, ACTOR)));
        }
        return problems;
    }

    /** The one-time token, for the console only. */
    String token() {
        return token;
    }

    private boolean isToken(String typed) {
        return MessageDigest.isEqual(
                typed.strip().toUpperCase(Locale.ROOT).getBytes(StandardCharsets.UTF_8),
                token.getBytes(StandardCharsets.UTF_8));
    }

    private static String randomToken() {
        var random = new SecureRandom();
        var letters = new StringBuilder();
        for (int i = 0; i < TOKEN_LETTERS; i++) {
            if (i > 0 && i % 4 == 0) {
                letters.append('-');
            }
            letters.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        return letters.toString();
    }
}
