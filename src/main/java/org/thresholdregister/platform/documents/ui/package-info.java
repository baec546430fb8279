/** Fields and links for files that are kept as evidence. */
@NullMarked
package org.thresholdregister.platform.documents.ui;

import org.jspecify.annotations.NullMarked;
