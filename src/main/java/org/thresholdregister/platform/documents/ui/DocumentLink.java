package org.thresholdregister.platform.documents.ui;

import com.vaadin.flow.component.html.Anchor;
import java.io.Serializable;
import org.thresholdregister.platform.documents.Document;
import org.thresholdregister.platform.ui.Downloads;

/** Links that download files kept as evidence. */
public final class DocumentLink {

    /**
     * Fetches a file from the service of the record that names it, which checks role and site and notes on the audit
     * trail who fetched it.
     */
    @FunctionalInterface
    public interface Content extends Serializable {
        byte[] of(long documentKey);
    }

    private DocumentLink() {}

    /** A link named after the file, its kind and size: {@code certificate.pdf (PDF, 120 kB)}. */
    public static Anchor of(Document document, Content content) {
        return of(document.name() + " (" + document.type() + ", " + size(document.bytes()) + ")", document, content);
    }

    /** A link with words of the page's own. */
    public static Anchor of(String words, Document document, Content content) {
        long key = document.key();
        return Downloads.link(words, document.name(), document.type().value(), out -> out.write(content.of(key)));
    }

    private static String size(int bytes) {
        if (bytes < 1_000) {
            return bytes + " bytes";
        }
        return bytes < 1_000_000 ? Math.round(bytes / 1_000.0) + " kB" : Math.round(bytes / 100_000.0) / 10.0 + " MB";
    }
}
