package org.thresholdregister.intake;

import java.util.Set;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.platform.security.SiteScope;

/**
 * On whose behalf files are imported.
 *
 * @param actor the name on the audit trail
 * @param scope the sites whose records may be added to
 * @param decisions the kinds of decision that may be entered
 */
record ImportRights(String actor, SiteScope scope, Set<DecisionKind> decisions) {}
