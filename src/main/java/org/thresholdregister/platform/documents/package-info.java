/** Files kept as evidence: certificates, signed sheets, letters as sent. */
@NullMarked
package org.thresholdregister.platform.documents;

import org.jspecify.annotations.NullMarked;
