/**
 * Tests in a real browser. {@link org.thresholdregister.browser.BrowserTest} is the class to extend: it starts the web
 * app and watches every page for requests to elsewhere and for errors.
 */
@NullMarked
package org.thresholdregister.browser;

import org.jspecify.annotations.NullMarked;
