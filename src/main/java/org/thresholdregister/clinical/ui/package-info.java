/** The clinical part on a worker's page, beside a test, and as a form to sign: the nurse's alone. */
@NullMarked
package org.thresholdregister.clinical.ui;

import org.jspecify.annotations.NullMarked;
