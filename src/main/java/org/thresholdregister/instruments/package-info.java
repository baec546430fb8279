/** The register of audiometers, earphones, rooms and testers, and whether a day's tests count. */
@NullMarked
package org.thresholdregister.instruments;

import org.jspecify.annotations.NullMarked;
