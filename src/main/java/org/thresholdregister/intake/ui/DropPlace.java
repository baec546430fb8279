package org.thresholdregister.intake.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.component.upload.UploadI18N;
import com.vaadin.flow.function.SerializableRunnable;
import com.vaadin.flow.server.streams.UploadEvent;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.intake.Column;
import org.thresholdregister.intake.ImportService;
import org.thresholdregister.intake.Table;
import org.thresholdregister.intake.UploadTooLargeException;
import org.thresholdregister.intake.UploadedFile;
import org.thresholdregister.platform.ui.Downloads;
import org.thresholdregister.platform.ui.SheetCsv;
import org.thresholdregister.platform.ui.UploadWords;

/** Where a file of one kind is dropped or chosen. It takes one; another is taken once that is removed. */
class DropPlace extends Div {

    private final Table table;
    private final transient ImportService imports;
    private final SerializableRunnable changed;
    private final Upload upload;
    private final Paragraph message = new Paragraph();
    private transient @Nullable UploadedFile file;

    /** @param changed is told when a file has come or gone */
    DropPlace(Table table, ImportService imports, SerializableRunnable changed) {
        this.table = table;
        this.imports = imports;
        this.changed = changed;
        addClassNames("tr-card", "tr-drop");
        upload = new Upload(this::take);
        upload.setMaxFiles(1);
        upload.setMaxFileSize(Math.toIntExact(ImportService.MOST_BYTES));
        upload.setI18n(words());
        String name = ImportWords.fileName(table);
        var choose = new Button("Choose a file");
        choose.setAriaLabel("Choose a file: " + name);
        upload.setUploadButton(choose);
        upload.addFileRejectedListener(event -> complain(event.getFileName() + ": " + event.getErrorMessage()));
        upload.addFileRemovedListener(event -> {
            giveUp();
            changed.run();
        });
        message.addClassName("tr-message");
        message.getElement().setAttribute("role", "alert");
        message.setVisible(false);
        add(
                new H2(ImportWords.title(table)),
                new Paragraph(ImportWords.explanation(table)),
                upload,
                message,
                Downloads.link(
                        "Empty " + name + " with its header row",
                        name,
                        SheetCsv.CONTENT_TYPE,
                        out -> out.write(header(table).getBytes(StandardCharsets.UTF_8))));
    }

    /** The file that was taken, if any. */
    Optional<UploadedFile> file() {
        return Optional.ofNullable(file);
    }

    boolean isUploading() {
        return upload.isUploading();
    }

    /** Runs beside the page, in the request that carries the bytes. */
    private void take(UploadEvent event) throws IOException {
        UI ui = event.getUI();
        try {
            UploadedFile taken = imports.keep(table, event.getFileName(), event.getInputStream());
            ui.access(() -> accept(taken));
        } catch (UploadTooLargeException tooLarge) {
            event.reject();
            ui.access(() -> complain(UploadTooLargeException.words(event.getFileName())));
        }
    }

    private void accept(UploadedFile taken) {
        giveUp();
        file = taken;
        changed.run();
    }

    private void giveUp() {
        message.setVisible(false);
        if (file != null) {
            imports.giveUp(List.of(file));
            file = null;
        }
    }

    private void complain(String words) {
        message.setText(words);
        message.setVisible(true);
    }

    private static String header(Table table) {
        return table.columns().stream().map(Column::columnName).collect(Collectors.joining(",")) + "\r\n";
    }

    private static UploadI18N words() {
        return UploadWords.forOneFile(
                "It is larger than " + ImportService.MOST_BYTES / (1 << 20)
                        + " MB. Split it, and import the roster first.",
                "It is no CSV file.");
    }
}
