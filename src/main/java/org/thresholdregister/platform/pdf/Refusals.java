package org.thresholdregister.platform.pdf;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a document referred to and was not given. */
final class Refusals {

    private final List<String> refused = new ArrayList<>();

    boolean refuse(@Nullable String uri) {
        refused.add(String.valueOf(uri));
        return false;
    }

    /** Resolves to nothing. */
    @Nullable
    String note(@Nullable String uri) {
        refused.add(String.valueOf(uri));
        return null;
    }

    /** @throws IllegalArgumentException where anything was refused; it says how much, since an address may tell a name */
    void check() {
        if (!refused.isEmpty()) {
            throw new IllegalArgumentException(
                    "a document to print may refer to nothing outside it; references refused: " + refused.size());
        }
    }
}
