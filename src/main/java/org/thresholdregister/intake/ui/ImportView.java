package org.thresholdregister.intake.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.ErrorEvent;
import com.vaadin.flow.server.VaadinSession;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import org.thresholdregister.intake.ImportPreview;
import org.thresholdregister.intake.ImportResult;
import org.thresholdregister.intake.ImportRun;
import org.thresholdregister.intake.ImportRuns;
import org.thresholdregister.intake.ImportService;
import org.thresholdregister.intake.PreviewResult;
import org.thresholdregister.intake.UploadedFile;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.HealthRecordPage;

/** Brings files into the register, step by step: hand over, look, confirm, watch, read what was stored. */
@Route("import")
@PageTitle("Import · Threshold Register")
@Menu(title = "Import", order = 50)
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class ImportView extends Div implements HealthRecordPage {

    private static final String CHANGED =
            "The register has changed since you looked, and the files would now do what stands here. Nothing was"
                    + " stored: look again, then confirm.";

    private final transient ImportService imports;
    private final transient ImportRuns runs;
    private final Div step = new Div();

    ImportView(ImportService imports, ImportRuns runs) {
        this.imports = imports;
        this.runs = runs;
        add(new H1("Import"), step);
        runs.current().ifPresentOrElse(this::follow, this::askForFiles);
    }

    private void show(Step next) {
        boolean replaces = step.getComponentCount() > 0;
        step.removeAll();
        step.add(next);
        if (replaces) {
            next.takeFocus();
        }
    }

    private void askForFiles() {
        show(new FilesStep(imports, this::look));
    }

    private void look(FilesStep files, List<UploadedFile> handedOver) {
        switch (imports.preview(handedOver)) {
            case PreviewResult.Ready(ImportPreview preview) -> showPreview(preview, "");
            case PreviewResult.Unusable(String message) -> files.complain(message);
        }
    }

    private void showPreview(ImportPreview preview, String notice) {
        show(new PreviewStep(preview, notice, imports, () -> follow(runs.start(preview)), () -> {
            imports.giveUp(preview.files());
            startOver();
        }));
    }

    private void follow(ImportRun run) {
        switch (run.state()) {
            case ImportRun.State.Running running -> show(new RunStep(run, () -> follow(run)));
            case ImportRun.State.Ended(ImportResult.RegisterChanged(ImportPreview anew)) -> {
                runs.dismiss();
                showPreview(anew, CHANGED);
            }
            case ImportRun.State.Ended(ImportResult result) ->
                show(new ResultStep(result, run.preview(), imports, this::startOver));
            case ImportRun.State.Failed(Throwable cause) -> {
                show(ResultStep.failed(this::startOver));
                tell(cause);
                runs.dismiss();
            }
        }
    }

    private void startOver() {
        runs.dismiss();
        askForFiles();
    }

    /** The house words failures and logs them under a reference. */
    private void tell(Throwable failure) {
        VaadinSession.getCurrent().getErrorHandler().error(new ErrorEvent(failure));
    }
}
