package org.thresholdregister.intake;

import java.time.InstantSource;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.security.concurrent.DelegatingSecurityContextRunnable;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Service;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;

/**
 * Imports in the background, one at a time for each user. What came of one waits for its user, who may have left the
 * page or signed out in between, until it is dismissed or has waited for {@link ImportService#WAIT}.
 */
@Service
public class ImportRuns {

    private static final Logger log = LoggerFactory.getLogger(ImportRuns.class);

    private final ImportService imports;
    private final CurrentUser currentUser;
    private final InstantSource time = InstantSource.system();
    private final Map<String, ImportRun> byUser = new ConcurrentHashMap<>();

    ImportRuns(ImportService imports, CurrentUser currentUser) {
        this.imports = imports;
        this.currentUser = currentUser;
    }

    /**
     * Starts to store what the preview showed, on behalf of the signed-in user.
     *
     * @throws IllegalStateException while another import of this user runs
     */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public ImportRun start(ImportPreview preview) {
        forgetOldOnes();
        ImportRun run = new ImportRun(preview, time);
        byUser.compute(currentUser.username(), (user, earlier) -> {
            if (earlier != null && earlier.isRunning()) {
                throw new IllegalStateException("an import of this user is running already");
            }
            return run;
        });
        // A copy, since signing out empties the session's own.
        SecurityContext signIn = SecurityContextHolder.createEmptyContext();
        signIn.setAuthentication(SecurityContextHolder.getContext().getAuthentication());
        Thread.ofVirtual().name("import").start(new DelegatingSecurityContextRunnable(() -> store(run), signIn));
        return run;
    }

    /** The signed-in user's import that runs or was the last to end, unless it has been dismissed. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public Optional<ImportRun> current() {
        forgetOldOnes();
        return Optional.ofNullable(byUser.get(currentUser.username()));
    }

    /** Forgets what came of the signed-in user's import, once it has been read. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public void dismiss() {
        byUser.computeIfPresent(currentUser.username(), (user, run) -> run.isRunning() ? run : null);
    }

    private void store(ImportRun run) {
        try {
            run.end(new ImportRun.State.Ended(imports.confirm(run.preview().token(), run)));
        } catch (RuntimeException | Error failure) {
            // Its message may quote a row, and a row is a health record; the screen hands the failure on as well.
            log.error(
                    "an import failed and nothing was stored: {}",
                    failure.getClass().getName());
            run.end(new ImportRun.State.Failed(failure));
        }
    }

    private void forgetOldOnes() {
        byUser.values().removeIf(run -> run.endedBefore(time.instant().minus(ImportService.WAIT)));
    }
}
