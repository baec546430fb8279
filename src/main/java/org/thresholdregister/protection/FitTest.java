package org.thresholdregister.protection;

import java.util.Optional;
import org.thresholdregister.platform.documents.Document;

/**
 * A fit test on record.
 *
 * @param document the report that is kept with it
 * @param withdrawn why it was entered by mistake; empty where it was not
 */
public record FitTest(long key, Product product, NewFitTest details, Optional<Document> document, String withdrawn) {

    public boolean counts() {
        return withdrawn.isEmpty();
    }
}
