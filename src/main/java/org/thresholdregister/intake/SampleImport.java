package org.thresholdregister.intake;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.annotation.Profile;
import org.springframework.context.event.EventListener;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.platform.accounts.DemoAccounts;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.roster.WorkerStore;

/** Fills an empty register with the sample plant, for a demonstration. */
@Component
@Profile(DemoAccounts.PROFILE)
class SampleImport {

    private static final Logger log = LoggerFactory.getLogger(SampleImport.class);
    private static final Map<Table, String> FILES =
            Map.of(Table.ROSTER, "roster.csv", Table.AUDIOGRAMS, "audiograms.csv", Table.DECISIONS, "decisions.csv");
    private static final ImportRights RIGHTS =
            new ImportRights("(demonstration)", SiteScope.all(), EnumSet.allOf(DecisionKind.class));

    private final Path sample;
    private final Importer importer;
    private final UploadFolder uploads;
    private final WorkerStore workers;
    private final TransactionTemplate transaction;

    SampleImport(
            @Value("${register.sample:${register.home:.}/sample-roster}") Path sample,
            Importer importer,
            UploadFolder uploads,
            WorkerStore workers,
            PlatformTransactionManager transactionManager) {
        this.sample = sample;
        this.importer = importer;
        this.uploads = uploads;
        this.workers = workers;
        this.transaction = new TransactionTemplate(transactionManager);
    }

    /** Before anything else that waits for the program to be ready, so that all of it finds the sample. */
    @EventListener(ApplicationReadyEvent.class)
    @Order(Ordered.HIGHEST_PRECEDENCE)
    void importIntoEmptyRegister() throws IOException {
        if (!Boolean.TRUE.equals(transaction.execute(status -> workers.isEmpty()))) {
            return;
        }
        if (!Files.isRegularFile(sample.resolve("roster.csv"))) {
            log.warn("there is no sample in {}; the register stays empty", sample);
            return;
        }
        List<UploadedFile> files = new ArrayList<>();
        try {
            for (Table table : Table.values()) {
                Path file = sample.resolve(FILES.getOrDefault(table, ""));
                if (Files.isRegularFile(file)) {
                    try (InputStream bytes = Files.newInputStream(file)) {
                        files.add(uploads.keep(table, file.getFileName().toString(), bytes));
                    }
                }
            }
            switch (importer.preview("sample", files, RIGHTS)) {
                case PreviewResult.Unusable(String message) -> log.warn("the sample is not imported: {}", message);
                case PreviewResult.Ready(ImportPreview preview) ->
                    importer.confirm(preview, RIGHTS, ImportProgress.unwatched());
            }
        } finally {
            files.forEach(uploads::delete);
        }
    }
}
