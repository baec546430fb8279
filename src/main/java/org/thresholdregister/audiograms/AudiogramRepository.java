package org.thresholdregister.audiograms;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface AudiogramRepository extends Repository<StoredAudiogram, Long> {

    StoredAudiogram save(StoredAudiogram audiogram);

    Optional<StoredAudiogram> findById(long key);

    @Query("from StoredAudiogram a where a.workerId in :workerKeys and a.takenOut = 0")
    List<StoredAudiogram> findThoseThatCount(Collection<Long> workerKeys);

    @Query("from StoredAudiogram a where a.workerId in :workerKeys and a.takenOut <> 0")
    List<StoredAudiogram> findThoseTakenOut(Collection<Long> workerKeys);

    @Query("select distinct a.workerId from StoredAudiogram a where a.testDate = :day and a.takenOut = 0")
    List<Long> findWorkerIdsByTestDate(LocalDate day);

    /** The entity is immutable, so that this one thing is told to the database itself. */
    @Modifying(flushAutomatically = true, clearAutomatically = true)
    @Query(value = "update audiogram set taken_out = id where id = :key and taken_out = 0", nativeQuery = true)
    int takeOut(long key);
}
