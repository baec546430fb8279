package org.thresholdregister.platform.accounts;

import java.text.Normalizer;
import org.jspecify.annotations.Nullable;
import org.springframework.security.crypto.password.PasswordEncoder;

/**
 * Reads a password the same whichever keyboard composed its accents (NFKC, as NIST SP 800-63B-4, section 3.1.1.2,
 * advises), then leaves it to another encoder.
 */
final class NormalizingPasswordEncoder implements PasswordEncoder {

    private final PasswordEncoder encoder;

    NormalizingPasswordEncoder(PasswordEncoder encoder) {
        this.encoder = encoder;
    }

    @Override
    public @Nullable String encode(@Nullable CharSequence password) {
        return encoder.encode(normalized(password));
    }

    @Override
    public boolean matches(@Nullable CharSequence password, @Nullable String stored) {
        return encoder.matches(normalized(password), stored);
    }

    @Override
    public boolean upgradeEncoding(@Nullable String stored) {
        return encoder.upgradeEncoding(stored);
    }

    private static @Nullable String normalized(@Nullable CharSequence password) {
        return password == null ? null : Normalizer.normalize(password, Normalizer.Form.NFKC);
    }
}
