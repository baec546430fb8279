package org.thresholdregister.platform.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jakarta.persistence.EntityManager;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.util.ReflectionTestUtils;
import org.springframework.transaction.IllegalTransactionStateException;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.thresholdregister.platform.RegisterTest;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.WithRegisterUser;

@RegisterTest
class AuditTrailTest {

    private enum TestAction implements AuditAction {
        WORKER_CHANGED
    }

    @Autowired
    AuditTrail auditTrail;

    @Autowired
    PlatformTransactionManager transactionManager;

    @Autowired
    EntityManager entityManager;

    @Autowired
    JdbcClient jdbc;

    private Map<String, Object> only(String subjectId) {
        return jdbc.sql("select * from audit_event where subject_id = ?")
                .param(subjectId)
                .query()
                .singleRow();
    }

    private long count(String subjectId) {
        return jdbc.sql("select count(*) from audit_event where subject_id = ?")
                .param(subjectId)
                .query(Long.class)
                .single();
    }

    @Test
    @WithRegisterUser(role = Role.NURSE, username = "nora")
    void anEntrySaysWhoDidWhatToWhichRecordAndWhen() {
        Instant before = Instant.now().minusSeconds(1);
        new TransactionTemplate(transactionManager)
                .executeWithoutResult(
                        status -> auditTrail.record(TestAction.WORKER_CHANGED, "worker", "W-1", "site of W-1 changed"));

        var entry = only("W-1");
        assertThat(entry)
                .containsEntry("actor", "nora")
                .containsEntry("action", "WORKER_CHANGED")
                .containsEntry("subject_type", "worker")
                .containsEntry("detail", "site of W-1 changed");
        assertThat(entry.get("at"))
                .isInstanceOfSatisfying(
                        OffsetDateTime.class, at -> assertThat(at.toInstant()).isBetween(before, Instant.now()));
    }

    @Test
    void anEntryGoesWithTheChangeThatIsRolledBack() {
        new TransactionTemplate(transactionManager).executeWithoutResult(status -> {
            auditTrail.record(TestAction.WORKER_CHANGED, "worker", "W-2", "");
            status.setRollbackOnly();
        });
        assertThat(count("W-2")).isZero();
    }

    @Test
    void anEntryOutsideATransactionIsRefused() {
        assertThatThrownBy(() -> auditTrail.record(TestAction.WORKER_CHANGED, "worker", "W-3", ""))
                .isInstanceOf(IllegalTransactionStateException.class);
        assertThat(count("W-3")).isZero();
    }

    @Test
    void theTrailCanOnlyBeAddedTo() {
        Set<String> offered = Arrays.stream(AuditTrail.class.getDeclaredMethods())
                .filter(method -> Modifier.isPublic(method.getModifiers()) && !method.isSynthetic())
                .map(Method::getName)
                .collect(Collectors.toSet());
        assertThat(offered).containsExactlyInAnyOrder("record", "recordAs");
    }

    @Test
    void anEntryThatIsChangedInMemoryIsNotChangedInTheRegister() {
        new TransactionTemplate(transactionManager).executeWithoutResult(status -> {
            auditTrail.record(TestAction.WORKER_CHANGED, "worker", "W-4", "as it was");
        });
        long id = jdbc.sql("select id from audit_event where subject_id = 'W-4'")
                .query(Long.class)
                .single();

        new TransactionTemplate(transactionManager).executeWithoutResult(status -> {
            var event = entityManager.find(AuditEvent.class, id);
            ReflectionTestUtils.setField(event, "detail", "tampered");
            entityManager.flush();
        });

        assertThat(only("W-4")).containsEntry("detail", "as it was");
    }
}
