package org.thresholdregister.platform.accounts;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What a password must be: 15 to 128 characters, of any kind, none of the commonly used ones, not one short piece
 * repeated, and without the username in it.
 *
 * <p>Source: NIST SP 800-63B-4, section 3.1.1.2 (at least 15 characters where the password stands alone, at least 64
 * allowed, no rules of composition, common and expected values refused). The upper bound of 128 only bounds the work.
 */
final class PasswordRule {

    static final int SHORTEST = 15;
    static final int LONGEST = 128;

    private static final Pattern REPEATED_PIECE = Pattern.compile("(.{1,5})\\1+", Pattern.DOTALL);
    private static final Set<String> COMMON = readCommon();

    private PasswordRule() {}

    /** What is wrong with the password, in words, or empty where it may be used. */
    static Optional<String> objection(String password, String username) {
        int length = password.codePointCount(0, password.length());
        if (length < SHORTEST) {
            return Optional.of("Use at least " + SHORTEST + " characters; a few words in a row do well.");
        }
        if (length > LONGEST) {
            return Optional.of("Use at most " + LONGEST + " characters.");
        }
        String folded = password.toLowerCase(Locale.ROOT);
        if (COMMON.contains(folded) || REPEATED_PIECE.matcher(folded).matches()) {
            return Optional.of("This password is among the first that others would try. Choose another.");
        }
        if (!username.isBlank() && folded.contains(username.toLowerCase(Locale.ROOT))) {
            return Optional.of("Leave the username out of the password.");
        }
        return Optional.empty();
    }

    private static Set<String> readCommon() {
        var stream = PasswordRule.class.getResourceAsStream("common-passwords.txt");
        if (stream == null) {
            throw new IllegalStateException("the list of common passwords is missing");
        }
        try (var reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .collect(Collectors.toUnmodifiableSet());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
