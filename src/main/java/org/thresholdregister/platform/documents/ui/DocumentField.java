package org.thresholdregister.platform.documents.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.server.streams.UploadEvent;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.platform.documents.MediaType;
import org.thresholdregister.platform.documents.NewDocument;
import org.thresholdregister.platform.ui.UploadWords;

/**
 * A field for one file to be kept as evidence: a PDF, a PNG or a JPEG picture of at most 10 MB. The bytes stay with the
 * page, never on a disk, until the page's service stores them; whoever leaves the page has given the file up.
 */
public class DocumentField extends Div {

    private static final String TOO_LARGE = "It is larger than " + NewDocument.MOST_BYTES / 1_000_000
            + " MB. Scan it at a lower resolution, or hand over the pages that matter.";
    private static final String WRONG_KIND =
            "It is no PDF, PNG or JPEG file. Save it as one of these, or take a photograph of it.";

    /** So that the label of each field of a page has an id of its own. */
    private static final AtomicInteger FIELDS = new AtomicInteger();

    private final Upload upload = new Upload(this::take);
    private final Button choose = new Button("Choose a file");
    private final Paragraph message = new Paragraph();
    private transient @Nullable NewDocument document;

    /** @param label what the file is, such as {@code Calibration certificate} */
    public DocumentField(String label) {
        addClassName("tr-document-field");
        int number = FIELDS.incrementAndGet();
        var name = new Span(label);
        name.setId("tr-document-" + number);
        name.addClassName("tr-field-label");
        var hint = new Span("PDF, PNG or JPEG, at most " + NewDocument.MOST_BYTES / 1_000_000 + " MB");
        hint.setId("tr-document-hint-" + number);
        hint.addClassName("tr-field-hint");
        getElement().setAttribute("role", "group");
        getElement().setAttribute("aria-labelledby", "tr-document-" + number);
        getElement().setAttribute("aria-describedby", "tr-document-hint-" + number);

        choose.setAriaLabel("Choose a file: " + label);
        upload.setUploadButton(choose);
        upload.setMaxFiles(1);
        upload.setMaxFileSize(NewDocument.MOST_BYTES);
        upload.setAcceptedMimeTypes(
                Arrays.stream(MediaType.values()).map(MediaType::value).toArray(String[]::new));
        upload.setAcceptedFileExtensions(".pdf", ".png", ".jpg", ".jpeg");
        upload.setI18n(UploadWords.forOneFile(TOO_LARGE, WRONG_KIND));
        upload.addFileRejectedListener(event -> refuse(event.getFileName() + ": " + event.getErrorMessage()));
        upload.addFileRemovedListener(event -> {
            document = null;
            withoutMessage();
        });
        message.addClassName("tr-message");
        message.getElement().setAttribute("role", "alert");
        message.setVisible(false);
        add(name, hint, upload, message);
    }

    /** The file that was taken, if any. */
    public Optional<NewDocument> document() {
        return Optional.ofNullable(document);
    }

    /** Whether a file is on its way; what is saved now would go without it. */
    public boolean isUploading() {
        return upload.isUploading();
    }

    /** Says beside the field what is wrong with it, until another file comes. */
    public void refuse(String sentence) {
        message.setText(sentence);
        message.setVisible(true);
    }

    /** Gives the file up and starts anew. */
    public void clear() {
        document = null;
        upload.clearFileList();
        withoutMessage();
    }

    /** Runs beside the page, in the request that carries the bytes; reads no more of them than can be kept. */
    void take(UploadEvent event) throws IOException {
        byte[] content;
        try (InputStream in = event.getInputStream()) {
            content = in.readNBytes(NewDocument.MOST_BYTES + 1);
        }
        String name = event.getFileName();
        Optional<NewDocument> taken = NewDocument.of(name, content);
        UI ui = event.getUI();
        if (taken.isPresent()) {
            ui.access(() -> accept(taken.get()));
        } else {
            String why = content.length == 0
                    ? "It is empty."
                    : content.length > NewDocument.MOST_BYTES ? TOO_LARGE : WRONG_KIND;
            event.reject(why);
            ui.access(() -> {
                clear();
                refuse(name + ": " + why);
            });
        }
    }

    private void accept(NewDocument taken) {
        document = taken;
        withoutMessage();
    }

    private void withoutMessage() {
        message.setText("");
        message.setVisible(false);
    }
}
