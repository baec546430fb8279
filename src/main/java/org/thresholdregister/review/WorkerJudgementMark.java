package org.thresholdregister.review;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.judging.RuleEdition;

/** When and by which edition of the rules a worker was last judged, and from which day on time alone may change what was found. */
@Entity
@Table(name = "worker_judgement")
class WorkerJudgementMark {

    @Id
    private long workerId;

    private LocalDate judgedOn;
    private @Nullable LocalDate nextChangeOn;
    private int ruleEdition;

    @SuppressWarnings("NullAway.Init")
    protected WorkerJudgementMark() {}

    WorkerJudgementMark(long workerKey, LocalDate judgedOn, @Nullable LocalDate nextChangeOn) {
        this.workerId = workerKey;
        this.judgedOn = judgedOn;
        this.nextChangeOn = nextChangeOn;
        this.ruleEdition = RuleEdition.OF_THIS_PROGRAM;
    }
}
