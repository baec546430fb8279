package org.thresholdregister.intake;

import java.io.IOException;
import java.io.InputStream;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.review.DecisionService;
import org.thresholdregister.review.DeterminationChange;

/**
 * Brings a plant's files into the register: they are handed over one by one, looked at together, and stored only when
 * the person who handed them over agrees to what the preview shows. Whatever is neither confirmed nor given up is
 * deleted after {@link #WAIT}.
 */
@Service
public class ImportService {

    /** The largest file that is taken, in bytes. */
    public static final long MOST_BYTES = UploadFolder.MOST_BYTES;

    /** How long files and previews wait. */
    static final Duration WAIT = Duration.ofHours(2);

    private record Waiting<T>(String owner, Instant since, T what) {}

    private final Importer importer;
    private final UploadFolder uploads;
    private final DecisionService decisions;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final InstantSource time = InstantSource.system();
    private final Map<String, Waiting<UploadedFile>> files = new ConcurrentHashMap<>();
    private final Map<String, Waiting<ImportPreview>> previews = new ConcurrentHashMap<>();

    ImportService(
            Importer importer,
            UploadFolder uploads,
            DecisionService decisions,
            AuditTrail auditTrail,
            CurrentUser currentUser) {
        this.importer = importer;
        this.uploads = uploads;
        this.decisions = decisions;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
    }

    /**
     * Takes a file and keeps it until it is imported or given up.
     *
     * @throws UploadTooLargeException where it is larger than what is taken; nothing was kept
     */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public UploadedFile keep(Table table, String fileName, InputStream bytes) throws IOException {
        deleteWhatWaitedTooLong();
        UploadedFile file = uploads.keep(table, fileName, bytes);
        files.put(file.id(), new Waiting<>(currentUser.username(), time.instant(), file));
        return file;
    }

    /**
     * Works out what importing these files would do, and stores nothing.
     *
     * @param uploaded files that the same user has handed over, at most one of a kind
     * @throws IllegalArgumentException where one is not the user's, waits no more, or is not the only one of its kind
     */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public PreviewResult preview(List<UploadedFile> uploaded) {
        long kinds = uploaded.stream().map(UploadedFile::table).distinct().count();
        if (uploaded.isEmpty() || kinds < uploaded.size() || !uploaded.stream().allMatch(this::isMine)) {
            throw new IllegalArgumentException("not one file of a kind, or not this user's");
        }
        PreviewResult result = importer.preview(UUID.randomUUID().toString(), List.copyOf(uploaded), rights());
        if (result instanceof PreviewResult.Ready(ImportPreview preview)) {
            remember(preview);
        }
        return result;
    }

    /**
     * Stores what the preview showed: all of it or nothing. Runs in the calling thread, which must carry the user's
     * sign-in; a screen calls it in the background and shows the progress. The files are deleted once it is stored or
     * stopped.
     */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public ImportResult confirm(String token, ImportProgress progress) {
        Waiting<ImportPreview> waiting = previews.get(token);
        if (waiting == null || !isMine(waiting) || !previews.remove(token, waiting)) {
            return new ImportResult.Expired();
        }
        ImportResult result = importer.confirm(waiting.what(), rights(), progress);
        switch (result) {
            case ImportResult.RegisterChanged(ImportPreview anew) -> remember(anew);
            case ImportResult.Stored stored -> delete(waiting.what().files());
            case ImportResult.Cancelled cancelled -> delete(waiting.what().files());
            case ImportResult.Expired expired -> {}
        }
        return result;
    }

    /** The problems of a preview, to be taken out of the register, which is noted on the audit trail. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional
    public List<RowProblem> problemsToTakeOut(ImportPreview preview) {
        auditTrail.record(
                ImportAction.PROBLEMS_DOWNLOADED,
                "import preview",
                preview.token(),
                preview.problems().size() + " problems of rows");
        return preview.problems();
    }

    /**
     * What the late tests of a preview would change, to be taken out of the register, which is noted on the audit
     * trail.
     */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional
    public List<DeterminationChange> lateChangesToTakeOut(ImportPreview preview) {
        auditTrail.record(
                ImportAction.LATE_CHANGES_DOWNLOADED,
                "import preview",
                preview.token(),
                preview.lateChanges().size() + " determinations that would change");
        return preview.lateChanges();
    }

    /** Deletes files that are not to be imported after all. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public void giveUp(List<UploadedFile> uploaded) {
        delete(uploaded.stream().filter(this::isMine).toList());
    }

    private ImportRights rights() {
        return new ImportRights(currentUser.username(), currentUser.scope(), decisions.kindsToEnter());
    }

    private boolean isMine(UploadedFile file) {
        Waiting<UploadedFile> waiting = files.get(file.id());
        return waiting != null && isMine(waiting);
    }

    private boolean isMine(Waiting<?> waiting) {
        return waiting.owner().equals(currentUser.username());
    }

    private void remember(ImportPreview preview) {
        previews.put(preview.token(), new Waiting<>(currentUser.username(), time.instant(), preview));
    }

    private void delete(List<UploadedFile> uploaded) {
        for (UploadedFile file : uploaded) {
            files.remove(file.id());
            uploads.delete(file);
        }
        previews.values().removeIf(preview -> preview.what().files().stream().anyMatch(uploaded::contains));
    }

    /** Also by the clock, since nobody may upload again for days. */
    @Scheduled(fixedDelay = 10, timeUnit = TimeUnit.MINUTES)
    void deleteWhatWaitedTooLong() {
        Instant latest = time.instant().minus(WAIT);
        delete(files.values().stream()
                .filter(file -> file.since().isBefore(latest))
                .map(Waiting::what)
                .toList());
    }
}
