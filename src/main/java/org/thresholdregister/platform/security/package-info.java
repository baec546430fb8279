/**
 * Who is signed in, in which role, and which sites that person may see.
 */
@NullMarked
package org.thresholdregister.platform.security;

import org.jspecify.annotations.NullMarked;
