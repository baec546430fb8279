/**
 * Documents to print: XHTML from a template becomes a tagged PDF (PDF/UA-1) with its fonts in it. Nothing is fetched from
 * anywhere, and the same input gives the same bytes.
 */
@NullMarked
package org.thresholdregister.platform.pdf;

import org.jspecify.annotations.NullMarked;
