package org.thresholdregister.rulesets;

/** Published within the transaction that changes what sites answer to: what was judged has to be judged again. */
public record RulesChanged() {}
