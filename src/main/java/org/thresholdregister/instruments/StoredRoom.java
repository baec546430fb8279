package org.thresholdregister.instruments;

import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "test_room")
@Immutable
class StoredRoom extends StoredEntry<Facts.Room> {

    private String site;
    private String name;
    private LocalDate usedFrom;
    private @Nullable LocalDate usedTo;

    @SuppressWarnings("NullAway.Init")
    protected StoredRoom() {}

    StoredRoom(Facts.Room facts, Change change, String enteredBy, Instant enteredAt) {
        super(change, enteredBy, enteredAt);
        site = facts.site();
        name = facts.name();
        usedFrom = facts.from();
        usedTo = facts.to().orElse(null);
    }

    @Override
    Facts.Room facts() {
        return new Facts.Room(site, name, usedFrom, Optional.ofNullable(usedTo));
    }
}
