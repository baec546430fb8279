package org.thresholdregister.protection;

import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.attenuation.AttenuationMethod;
import org.thresholdregister.core.attenuation.Protector;
import org.thresholdregister.core.attenuation.ProtectorKind;
import org.thresholdregister.core.attenuation.Worn;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.security.SiteScope;

/** The protectors of all sites, and the method that each site's employer picked. It checks no role. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class Catalogue {

    private final EntityManager entityManager;

    Catalogue(EntityManager entityManager) {
        this.entityManager = entityManager;
    }

    /** By site and name. */
    List<Product> all(SiteScope scope) {
        Map<Long, StoredProduct> byKey = ListQuery.of(entityManager, "StoredProduct p", "p.site", scope)
                .all("p", "order by p.site, p.name, p.id", tuple -> tuple.get(0, StoredProduct.class))
                .stream()
                .collect(Collectors.toMap(
                        StoredProduct::key, Function.identity(), (one, other) -> one, LinkedHashMap::new));
        return byKey.values().stream().map(stored -> toProduct(stored, byKey)).toList();
    }

    Map<Long, Product> byKey() {
        return all(SiteScope.all()).stream().collect(Collectors.toMap(Product::key, Function.identity()));
    }

    Optional<Product> find(long key, SiteScope scope) {
        return all(scope).stream().filter(product -> product.key() == key).findFirst();
    }

    /** @param key of one that there is */
    StoredProduct stored(long key) {
        return Objects.requireNonNull(entityManager.find(StoredProduct.class, key));
    }

    long add(ProductDetails details, String by, Instant at) {
        var stored = new StoredProduct(details, by, at);
        entityManager.persist(stored);
        return stored.key();
    }

    private static Product toProduct(StoredProduct stored, Map<Long, StoredProduct> byKey) {
        ProductDetails details = stored.details();
        Worn worn = details.pair()
                .<Worn>map(pair -> new Worn.Both(
                        protector(Objects.requireNonNull(byKey.get(pair.plugKey()))
                                .details()),
                        protector(Objects.requireNonNull(byKey.get(pair.muffKey()))
                                .details())))
                .orElseGet(() -> new Worn.One(protector(details)));
        return new Product(stored.key(), details, worn, stored.retiredOn(), stored.retiredReason());
    }

    private static Protector protector(ProductDetails details) {
        return new Protector(details.name(), details.kind(), details.label());
    }

    /** Whether these two are a plug and a muff of one site. */
    boolean isPair(ProductDetails.Pair pair, String site) {
        StoredProduct plug = entityManager.find(StoredProduct.class, pair.plugKey());
        StoredProduct muff = entityManager.find(StoredProduct.class, pair.muffKey());
        return plug != null
                && muff != null
                && plug.details().site().equals(site)
                && muff.details().site().equals(site)
                && plug.details().kind() != ProtectorKind.MUFF
                && plug.details().kind() != ProtectorKind.DUAL
                && muff.details().kind() == ProtectorKind.MUFF;
    }

    void choose(MethodChoice choice, String by, Instant at) {
        entityManager.persist(new StoredMethodChoice(choice, by, at));
    }

    /** The latest choice of each site in the scope. */
    Map<String, MethodChoice> chosen(SiteScope scope) {
        return ListQuery.of(entityManager, "StoredMethodChoice m", "m.site", scope)
                .all("m", "order by m.id", tuple -> tuple.get(0, StoredMethodChoice.class))
                .stream()
                .map(StoredMethodChoice::toChoice)
                .collect(Collectors.toMap(MethodChoice::site, Function.identity(), (earlier, later) -> later));
    }

    Optional<AttenuationMethod> methodOf(String site) {
        return Optional.ofNullable(chosen(SiteScope.all()).get(site)).map(MethodChoice::method);
    }
}
