package org.thresholdregister.employment;

import jakarta.persistence.EntityManager;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.security.SiteScope;

/** The sales on record. It checks no role: the service that calls it does, and screens never call it. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class SaleStore {

    private final EntityManager entityManager;

    SaleStore(EntityManager entityManager) {
        this.entityManager = entityManager;
    }

    /** The sales of the sites in the scope, the latest first. */
    List<PlantSale> sales(SiteScope scope) {
        Map<Long, Integer> workers = entityManager
                .createQuery(
                        "select e.plantSaleId, count(*) from StoredWorkEvent e where e.plantSaleId is not null"
                                + " and not exists (select 1 from StoredWorkEvent c where c.correctsId = e.id)"
                                + " group by e.plantSaleId",
                        Object[].class)
                .getResultStream()
                .collect(Collectors.toMap(row -> (Long) row[0], row -> Math.toIntExact((Long) row[1])));
        Map<Long, PlantSale.HandOver> handOvers = entityManager
                .createQuery("select h from StoredRecordsHandOver h", StoredRecordsHandOver.class)
                .getResultStream()
                .collect(Collectors.toMap(StoredRecordsHandOver::saleKey, StoredRecordsHandOver::toHandOver));
        return ListQuery.of(entityManager, "StoredPlantSale s", "s.site", scope)
                .all("s", "", tuple -> tuple.get(0, StoredPlantSale.class))
                .stream()
                .sorted(Comparator.comparing(StoredPlantSale::soldOn)
                        .thenComparing(StoredPlantSale::key)
                        .reversed())
                .map(sale -> sale.toSale(
                        workers.getOrDefault(sale.key(), 0), Optional.ofNullable(handOvers.get(sale.key()))))
                .toList();
    }
}
