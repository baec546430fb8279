package org.thresholdregister.protection;

import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.security.SiteScope;

/** What the lists of this feature need to know of a worker who is employed. */
record PersonRow(
        long key, String workerId, String name, String site, String department, Optional<LocalDate> enrolledFrom) {

    /** Everybody of the scope who is employed on a day, by name. */
    static List<PersonRow> employed(EntityManager entityManager, SiteScope scope, LocalDate day) {
        return ListQuery.of(entityManager, "Worker w", "w.site", scope)
                .where("(w.endDate is null or w.endDate >= ?)", day)
                .all(
                        "w.id, w.workerId, w.familyName, w.givenName, w.site, w.department, w.enrolledFrom",
                        "order by w.search, w.id",
                        PersonRow::of);
    }

    private static PersonRow of(Tuple tuple) {
        return new PersonRow(
                tuple.get(0, Long.class),
                tuple.get(1, String.class),
                name(tuple.get(2, String.class), tuple.get(3, String.class), tuple.get(1, String.class)),
                tuple.get(4, String.class),
                tuple.get(5, String.class),
                Optional.ofNullable(tuple.get(6, LocalDate.class)));
    }

    /** {@code Quill, Cato}, or the number where no name is given. */
    static String name(String familyName, String givenName, String workerId) {
        String name = familyName + (givenName.isEmpty() ? "" : ", " + givenName);
        return name.isBlank() ? workerId : name;
    }

    boolean isEnrolledOn(LocalDate day) {
        return enrolledFrom.filter(first -> !first.isAfter(day)).isPresent();
    }
}
