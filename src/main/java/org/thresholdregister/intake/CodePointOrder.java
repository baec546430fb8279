package org.thresholdregister.intake;

import java.util.Comparator;

/**
 * Orders texts by their Unicode code points. {@link String#compareTo} orders by UTF-16 units, which puts the characters
 * beyond U+FFFF before some of those below.
 */
public final class CodePointOrder {

    public static final Comparator<String> COMPARATOR = CodePointOrder::compare;

    private CodePointOrder() {}

    private static int compare(String one, String other) {
        int length = Math.min(one.length(), other.length());
        for (int i = 0; i < length; i++) {
            char a = one.charAt(i);
            char b = other.charAt(i);
            if (a != b) {
                // Where both are surrogates, the unit order is the code point order; otherwise a surrogate is larger.
                boolean sameKind = Character.isSurrogate(a) == Character.isSurrogate(b);
                return sameKind
                        ? Character.compare(a, b)
                        : Boolean.compare(Character.isSurrogate(a), Character.isSurrogate(b));
            }
        }
        return Integer.compare(one.length(), other.length());
    }
}
