package org.thresholdregister.instruments;

import jakarta.persistence.EntityManager;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** The entries as they stand: the last of each line, in the order of the first ones, without the withdrawn. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class EntryBook {

    private final EntityManager entities;

    EntryBook(EntityManager entities) {
        this.entities = entities;
    }

    <F extends Facts, S extends StoredEntry<F>> List<Entry<F>> standing(Class<S> type) {
        Map<Long, S> last = new LinkedHashMap<>();
        entities.createQuery("from " + type.getSimpleName() + " e order by e.id", type)
                .getResultList()
                .forEach(entry -> last.put(entry.key(), entry));
        return last.values().stream()
                .filter(entry -> !entry.isWithdrawn())
                .map(entry -> entry.toEntry())
                .toList();
    }

    /** As they stand, with their verdicts alone: many a year, and read whenever a test is. */
    List<CheckLine> checks() {
        Map<Long, CheckLine> last = new LinkedHashMap<>();
        entities.createQuery(
                        "select new org.thresholdregister.instruments.CheckLine("
                                + "c.id, c.corrects, c.withdrawn, c.audiometerId, c.checkedOn, c.verdict)"
                                + " from StoredCheck c order by c.id",
                        CheckLine.class)
                .getResultList()
                .forEach(line -> last.put(line.key(), line));
        return last.values().stream().filter(line -> !line.withdrawn()).toList();
    }

    /** Returns the key of the line. */
    long add(StoredEntry<?> entry) {
        entities.persist(entry);
        entities.flush();
        return entry.key();
    }
}
