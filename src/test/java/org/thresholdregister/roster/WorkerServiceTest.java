package org.thresholdregister.roster;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.roster.WorkerFilter.Status;

@RegisterTest
class WorkerServiceTest {

    private static final String ROSTER = """
            worker_id,birth_date,sex,family_name,given_name,hire_date,end_date,site,department,job_title,noise_group,twa_dba,enrolled_from,email,language
            007,1980-05-01,F,Núñez,Ada,2010-02-03,,Mill,Saws,Sawyer,S-1,88.50,2011-01-01,ada@mill.example,es
            12_3,1975-01-31,M,de Orrin,Bela,,2026-03-08,Mill,Press,,,,,,
            1203,1975-01-31,M,Orrin,Cato,,2026-03-09,Yard,Press,,,,,,
            """;

    @Autowired
    private WorkerService workers;

    @Autowired
    private TestImports files;

    @BeforeEach
    void threeWorkers() {
        SignIn.as(Role.NURSE);
        files.store(ROSTER, "", "");
    }

    private List<String> found(WorkerFilter filter, Order<WorkerColumn> order) {
        List<String> found = workers.find(filter, order, 0, 10).stream()
                .map(WorkerRow::workerId)
                .toList();
        assertThat(workers.count(filter)).isEqualTo(found.size());
        return found;
    }

    private List<String> searched(String text) {
        return found(
                new WorkerFilter(text, Optional.empty(), Optional.empty(), Status.ALL),
                Order.ascending(WorkerColumn.NAME));
    }

    @Test
    void whatTheRosterSaysComesBackAsItWas() {
        assertThat(workers.get("007"))
                .contains(new WorkerDetails(
                        "007",
                        Optional.of(LocalDate.of(1980, 5, 1)),
                        Optional.of(Sex.FEMALE),
                        "Núñez",
                        "Ada",
                        Optional.of(LocalDate.of(2010, 2, 3)),
                        Optional.empty(),
                        "Mill",
                        "Saws",
                        "Sawyer",
                        "S-1",
                        Optional.of(new BigDecimal("88.5")),
                        Optional.of(LocalDate.of(2011, 1, 1)),
                        "ada@mill.example",
                        "es"));
        assertThat(workers.get("7")).isEmpty();
    }

    @Test
    void aSearchTakesWordsInAnyOrderWithoutAccentsAndInAnyCase() {
        assertThat(searched("nunez")).containsExactly("007");
        assertThat(searched("  ADA  NÚÑEZ ")).containsExactly("007");
        assertThat(searched("orrin")).containsExactly("12_3", "1203");
        assertThat(searched("orrin 1203")).containsExactly("1203");
        assertThat(searched("")).hasSize(3);
    }

    @Test
    void whatIsSpecialInPatternsIsOrdinaryInASearch() {
        assertThat(searched("12_3")).containsExactly("12_3");
        assertThat(searched("%")).isEmpty();
        assertThat(searched("!")).isEmpty();
        assertThat(searched("' or '1'='1")).isEmpty();
    }

    @Test
    void theLastDayOfEmploymentCountsAsActive() {
        Order<WorkerColumn> order = Order.ascending(WorkerColumn.WORKER_ID);
        assertThat(found(new WorkerFilter("", Optional.empty(), Optional.empty(), Status.ACTIVE), order))
                .containsExactly("007", "1203");
        assertThat(found(new WorkerFilter("", Optional.empty(), Optional.empty(), Status.LEFT), order))
                .containsExactly("12_3");
        assertThat(found(new WorkerFilter("", Optional.of("Mill"), Optional.of("Press"), Status.ALL), order))
                .containsExactly("12_3");
    }

    @Test
    void everyColumnOrdersBothWays() {
        for (WorkerColumn column : WorkerColumn.values()) {
            List<String> ascending = found(WorkerFilter.EVERYONE, Order.ascending(column));
            assertThat(ascending).hasSize(3);
            assertThat(found(WorkerFilter.EVERYONE, Order.descending(column)))
                    .as(column.name())
                    .isEqualTo(ascending.reversed());
        }
        assertThat(found(WorkerFilter.EVERYONE, Order.ascending(WorkerColumn.NAME)))
                .containsExactly("12_3", "007", "1203");
    }

    @Test
    void pagesTogetherAreTheWholeList() {
        List<String> all = new ArrayList<>();
        for (int offset = 0; offset < 4; offset++) {
            workers.find(WorkerFilter.EVERYONE, Order.ascending(WorkerColumn.SITE), offset, 1)
                    .forEach(row -> all.add(row.workerId()));
        }
        assertThat(all).containsExactly("12_3", "007", "1203");
    }
}
