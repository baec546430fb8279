package org.thresholdregister.intake.ui;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.DetachEvent;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.progressbar.ProgressBar;
import com.vaadin.flow.function.SerializableRunnable;
import com.vaadin.flow.shared.Registration;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.intake.ImportProgress.Phase;
import org.thresholdregister.intake.ImportRun;
import org.thresholdregister.platform.ui.LeadSentence;

/** Shows how far an import is; the page asks for it every half second. */
class RunStep extends Step {

    private static final int POLL_MILLISECONDS = 500;

    private final transient ImportRun run;
    private final SerializableRunnable ended;
    private final Paragraph what = new Paragraph();
    private final ProgressBar bar = new ProgressBar();
    private final Paragraph howFar = new Paragraph();
    private final Button stop = new Button("Stop", click -> stop());
    private @Nullable Registration polling;

    RunStep(ImportRun run, SerializableRunnable ended) {
        super(new LeadSentence("The files are being stored. You may leave this page; it goes on."));
        this.run = run;
        this.ended = ended;
        what.getElement().setAttribute("role", "status");
        howFar.addClassName("tr-figures");
        bar.addClassName("tr-progress");
        bar.getElement().setAttribute("aria-label", "Progress of this step");
        add(what, bar, howFar, stop);
        if (run.state() instanceof ImportRun.State.Running running) {
            show(running);
        }
    }

    @Override
    protected void onAttach(AttachEvent event) {
        super.onAttach(event);
        event.getUI().setPollInterval(POLL_MILLISECONDS);
        polling = event.getUI().addPollListener(poll -> refresh());
    }

    @Override
    protected void onDetach(DetachEvent event) {
        event.getUI().setPollInterval(-1);
        if (polling != null) {
            polling.remove();
        }
        super.onDetach(event);
    }

    private void stop() {
        run.stop();
        refresh();
    }

    private void refresh() {
        if (run.state() instanceof ImportRun.State.Running running) {
            show(running);
        } else {
            ended.run();
        }
    }

    private void show(ImportRun.State.Running running) {
        boolean stopping = run.isStopping();
        stop.setEnabled(!stopping);
        String step = "Step " + (running.phase().ordinal() + 1) + " of " + Phase.values().length + ": "
                + ImportWords.phase(running.phase()) + ".";
        show(stopping ? "Stopping. Nothing will be stored." : step);
        int total = running.total();
        bar.setIndeterminate(total == 0);
        bar.setValue(total == 0 ? 0 : (double) running.done() / total);
        String far = ImportWords.howFar(running.done(), total);
        howFar.setText((far.isEmpty() ? "" : far + ". ") + ImportWords.howLong(run.duration()) + " so far.");
    }

    /** Sets the words only where they differ, so that they are read aloud once. */
    private void show(String words) {
        if (!words.equals(what.getText())) {
            what.setText(words);
        }
    }
}
