package org.thresholdregister.protection;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.attenuation.ProtectorKind;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;

/** The catalogue of protectors of the user's sites, and which method of estimating each site's employer picked. */
@Service
@Transactional
public class ProtectorService {

    /** The longest reason for retiring one, in characters. */
    public static final int LONGEST_REASON = 500;

    private final Catalogue catalogue;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final Clock clock;

    ProtectorService(Catalogue catalogue, AuditTrail auditTrail, CurrentUser currentUser, Clock clock) {
        this.catalogue = catalogue;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    /** By site and name, those that are given out no more among them. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public List<Product> catalogue() {
        return catalogue.all(currentUser.scope());
    }

    /** Adds a protector; returns what stands against it. */
    @PreAuthorize(Roles.HAS_NURSE)
    public Optional<ProtectionProblem> add(ProductDetails details) {
        Optional<ProtectionProblem> problem = objectionTo(details);
        if (problem.isEmpty()) {
            long key = catalogue.add(details, currentUser.username(), clock.instant());
            note(ProtectionAction.PROTECTOR_ADDED, key, details.kind().word());
        }
        return problem;
    }

    private Optional<ProtectionProblem> objectionTo(ProductDetails details) {
        if (!isOpen(details.site())) {
            return Optional.of(ProtectionProblem.SITE_NOT_OPEN);
        }
        if (details.name().isBlank()) {
            return Optional.of(ProtectionProblem.NAME_MISSING);
        }
        if (details.name().length() > ProductDetails.LONGEST_NAME
                || details.sizes().length() > ProductDetails.LONGEST_SIZES) {
            return Optional.of(ProtectionProblem.TEXT_TOO_LONG);
        }
        boolean isPair = details.pair()
                .filter(pair -> catalogue.isPair(pair, details.site()))
                .isPresent();
        if ((details.kind() == ProtectorKind.DUAL) != details.pair().isPresent()
                || (details.pair().isPresent() && !isPair)) {
            return Optional.of(ProtectionProblem.NO_PAIR);
        }
        boolean taken = catalogue.all(currentUser.scope()).stream()
                .filter(Product::isGivenOut)
                .anyMatch(product -> product.details().site().equals(details.site())
                        && product.details().name().equalsIgnoreCase(details.name()));
        return taken ? Optional.of(ProtectionProblem.NAME_TAKEN) : Optional.empty();
    }

    /** Says that a protector is given out no more from today on; whoever has one keeps it. Returns what stands against it. */
    @PreAuthorize(Roles.HAS_NURSE)
    public Optional<ProtectionProblem> retire(long key, String reason) {
        Optional<Product> product = catalogue.find(key, currentUser.scope());
        if (product.isEmpty()) {
            return Optional.of(ProtectionProblem.UNKNOWN_PROTECTOR);
        }
        if (!product.get().isGivenOut()) {
            return Optional.of(ProtectionProblem.RETIRED);
        }
        if (reason.isBlank()) {
            return Optional.of(ProtectionProblem.REASON_MISSING);
        }
        if (reason.length() > LONGEST_REASON) {
            return Optional.of(ProtectionProblem.TEXT_TOO_LONG);
        }
        catalogue.stored(key).retire(LocalDate.now(clock), reason, currentUser.username());
        note(ProtectionAction.PROTECTOR_RETIRED, key, "");
        return Optional.empty();
    }

    /** The method that each of the user's sites picked; sites without a choice are not in it. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public Map<String, MethodChoice> methods() {
        return catalogue.chosen(currentUser.scope());
    }

    /** Picks the method of a site; returns what stands against it. */
    @PreAuthorize(Roles.HAS_NURSE)
    public Optional<ProtectionProblem> choose(MethodChoice choice) {
        if (!isOpen(choice.site())) {
            return Optional.of(ProtectionProblem.SITE_NOT_OPEN);
        }
        if (choice.reason().isBlank()) {
            return Optional.of(ProtectionProblem.REASON_MISSING);
        }
        if (choice.reason().length() > MethodChoice.LONGEST_REASON) {
            return Optional.of(ProtectionProblem.TEXT_TOO_LONG);
        }
        catalogue.choose(choice, currentUser.username(), clock.instant());
        auditTrail.record(
                ProtectionAction.PROTECTION_METHOD_CHOSEN,
                "site",
                choice.site(),
                choice.method().word());
        return Optional.empty();
    }

    private boolean isOpen(String site) {
        return currentUser.scope().includes(site.isEmpty() ? null : site);
    }

    private void note(ProtectionAction action, long key, String detail) {
        auditTrail.record(action, "protector", Long.toString(key), detail);
    }
}
