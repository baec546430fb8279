package org.thresholdregister.core.rules;

/**
 * The numbers by which a lasting change of an ear is told from a passing one.
 *
 * @param improvementDb mean improvement on two tests running from which a better baseline is proposed
 * @param persistenceMonths the time that a shift has to last
 */
public record RevisionRule(int improvementDb, int persistenceMonths) {

    /** The professional guide on audiometric baseline revision, text of 49 CFR 227 Appendix C. */
    public static final RevisionRule GUIDE = new RevisionRule(5, 6);
}
