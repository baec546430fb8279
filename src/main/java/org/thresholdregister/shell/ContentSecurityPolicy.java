package org.thresholdregister.shell;

/**
 * What a page of ours may load: our own files only, in no one's frame.
 *
 * <p>Two doors stay ajar because the framework's client needs them: {@code 'unsafe-eval'}, since it builds functions
 * from the expressions that the server sends, and {@code 'unsafe-inline'} for styles, since components set style
 * attributes. Inline scripts run only with the nonce of the one response that carries them.
 */
final class ContentSecurityPolicy {

    private static final String EVERYTHING_ELSE = "default-src 'none'; connect-src 'self'; img-src 'self' data:;"
            + " font-src 'self' data:; style-src 'self' 'unsafe-inline'; form-action 'self'; base-uri 'self';"
            + " frame-ancestors 'none'; object-src 'none'; manifest-src 'self'; script-src 'self'";

    /** For every response but the host page. */
    static final String WITHOUT_INLINE_SCRIPTS = EVERYTHING_ELSE;

    private ContentSecurityPolicy() {}

    /** For the host page, whose own inline scripts carry the nonce. */
    static String withNonce(String nonce) {
        return EVERYTHING_ELSE + " 'nonce-" + nonce + "' 'unsafe-eval'";
    }
}
