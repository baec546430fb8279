package org.thresholdregister.review;

import java.util.Optional;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.platform.documents.Document;

/**
 * What shows that a decision on record was carried out.
 *
 * @param decisionKey the register's own key of the decision
 * @param mayOpen whether the signed-in user may open the file
 */
public record DecisionEvidence(
        long decisionKey,
        Decision decision,
        Evidence.Means means,
        String note,
        Optional<Document> document,
        boolean mayOpen) {}
