package org.thresholdregister.testing;

import java.time.LocalDate;

/** Where the page takes from what it offers for a site. */
public interface SuggestionSource {

    /** What may be used, or was used, at this site on that day. */
    Suggestions at(String site, LocalDate day);
}
