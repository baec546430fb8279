package org.thresholdregister.instruments;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.Immutable;
import org.thresholdregister.core.calibration.Tester.Qualification;

@Entity
@Table(name = "tester")
@Immutable
class StoredTester extends StoredEntry<Facts.Person> {

    private String site;
    private String name;

    @Enumerated(EnumType.STRING)
    private Qualification qualification;

    private String supervisor;

    @SuppressWarnings("NullAway.Init")
    protected StoredTester() {}

    StoredTester(Facts.Person facts, Change change, String enteredBy, Instant enteredAt) {
        super(change, enteredBy, enteredAt);
        site = facts.site();
        name = facts.name();
        qualification = facts.qualification();
        supervisor = facts.supervisor();
    }

    @Override
    Facts.Person facts() {
        return new Facts.Person(site, name, qualification, supervisor);
    }
}
