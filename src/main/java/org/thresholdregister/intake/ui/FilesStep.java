package org.thresholdregister.intake.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.function.SerializableBiConsumer;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.intake.ImportService;
import org.thresholdregister.intake.Table;
import org.thresholdregister.intake.UploadedFile;
import org.thresholdregister.platform.ui.LeadSentence;

/** Takes the files, each in its place. */
class FilesStep extends Step {

    private final List<DropPlace> places;
    private final Paragraph message = new Paragraph();
    private final SerializableBiConsumer<FilesStep, List<UploadedFile>> look;

    FilesStep(ImportService imports, SerializableBiConsumer<FilesStep, List<UploadedFile>> look) {
        super(new LeadSentence("Hand over your files; you see what they would do before anything is stored."));
        this.look = look;
        places = Arrays.stream(Table.values())
                .map(table -> new DropPlace(table, imports, this::forgetComplaint))
                .toList();
        var all = new Div();
        all.addClassName("tr-drops");
        places.forEach(all::add);
        message.addClassName("tr-message");
        message.getElement().setAttribute("role", "alert");
        message.setVisible(false);
        var check = new Button("Check the files", click -> check());
        check.addThemeVariants(ButtonVariant.PRIMARY);
        add(
                new Paragraph(
                        "One of them, or all at once. Tests and decisions need their workers in the register or on"
                                + " the roster beside them."),
                all,
                message,
                check);
    }

    /** Says why the files cannot be looked at; they stay where they are. */
    void complain(String words) {
        message.setText(words);
        message.setVisible(true);
    }

    private void forgetComplaint() {
        message.setVisible(false);
    }

    private void check() {
        forgetComplaint();
        List<UploadedFile> files =
                places.stream().map(DropPlace::file).flatMap(Optional::stream).toList();
        if (places.stream().anyMatch(DropPlace::isUploading)) {
            complain("A file is still on its way. Wait until it has arrived, then check.");
        } else if (files.isEmpty()) {
            complain("There is no file to check yet. Hand over at least one of the three.");
        } else {
            look.accept(this, files);
        }
    }
}
