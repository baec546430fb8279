package org.thresholdregister.audiograms;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface AudiogramRepository extends Repository<StoredAudiogram, Long> {

    StoredAudiogram save(StoredAudiogram audiogram);

    List<StoredAudiogram> findAllByWorkerIdIn(Collection<Long> workerKeys);

    @Query("select distinct a.workerId from StoredAudiogram a where a.testDate = :day")
    List<Long> findWorkerIdsByTestDate(LocalDate day);
}
