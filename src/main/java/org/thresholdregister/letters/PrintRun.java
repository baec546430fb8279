package org.thresholdregister.letters;

/**
 * Letters printed in one go.
 *
 * @param pdf all of them in order; empty where there was none to print
 * @param letters how many are in it
 * @param leftOut how many could not be printed, since the worker or the test is not among those that the user may see
 */
public record PrintRun(byte[] pdf, int letters, int leftOut) {}
