package org.thresholdregister.platform.documents.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.BrowserlessTest;
import com.vaadin.browserless.ViewPackages;
import com.vaadin.browserless.internal.MockVaadin;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.server.VaadinRequest;
import com.vaadin.flow.server.VaadinResponse;
import com.vaadin.flow.server.VaadinSession;
import com.vaadin.flow.server.streams.UploadEvent;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.thresholdregister.platform.documents.Document;
import org.thresholdregister.platform.documents.MediaType;
import org.thresholdregister.platform.documents.NewDocument;

@ViewPackages(packages = {})
class DocumentFieldTest extends BrowserlessTest {

    private static final byte[] PDF = "%PDF-1.7 a certificate".getBytes(StandardCharsets.US_ASCII);

    private final DocumentField field = new DocumentField("Calibration certificate");

    @BeforeEach
    void showTheField() {
        UI.getCurrent().add(field);
    }

    private Upload upload() {
        return (Upload)
                field.getChildren().filter(Upload.class::isInstance).findFirst().orElseThrow();
    }

    /** What the request with the bytes does. */
    private void upload(String name, byte[] content) {
        var event =
                new UploadEvent(
                        VaadinRequest.getCurrent(),
                        VaadinResponse.getCurrent(),
                        VaadinSession.getCurrent(),
                        name,
                        content.length,
                        "application/octet-stream",
                        field.getElement(),
                        null) {
                    @Override
                    public InputStream getInputStream() {
                        return new ByteArrayInputStream(content);
                    }
                };
        try {
            field.take(event);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        assertThat(event.isRejected()).isEqualTo(NewDocument.of(name, content).isEmpty());
        MockVaadin.runUIQueue();
    }

    private Paragraph message() {
        return (Paragraph) field.getChildren()
                .filter(Paragraph.class::isInstance)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aFileThatCanBeKeptIsTaken() {
        assertThat(field.document()).isEmpty();
        upload("C:\\scans\\booth 2.pdf", PDF);
        assertThat(field.document()).hasValueSatisfying(taken -> {
            assertThat(taken.name()).isEqualTo("booth 2.pdf");
            assertThat(taken.type()).isEqualTo(MediaType.PDF);
            assertThat(taken.content()).isEqualTo(PDF);
        });
        assertThat(message().isVisible()).isFalse();
        field.clear();
        assertThat(field.document()).isEmpty();
    }

    @Test
    void aFileOfAnotherKindIsRefusedWhateverItsName() {
        upload("certificate.pdf", "plain words".getBytes(StandardCharsets.US_ASCII));
        assertThat(field.document()).isEmpty();
        assertThat(message().isVisible()).isTrue();
        assertThat(message().getText())
                .startsWith("certificate.pdf: It is no PDF, PNG or JPEG file.")
                .contains("Save it as one of these");
        upload("certificate.pdf", PDF);
        assertThat(field.document()).isPresent();
        assertThat(message().isVisible()).isFalse();
    }

    @Test
    void anEmptyFileIsSaidToBeEmpty() {
        upload("certificate.pdf", new byte[0]);
        assertThat(field.document()).isEmpty();
        assertThat(message().getText()).isEqualTo("certificate.pdf: It is empty.");
    }

    @Test
    void whatIsTooLargeIsRefusedHereAndHeldBackByTheBrowser() {
        byte[] content = Arrays.copyOf(PDF, NewDocument.MOST_BYTES + 1);
        upload("certificate.pdf", content);
        assertThat(field.document()).isEmpty();
        assertThat(message().getText()).startsWith("certificate.pdf: It is larger than 10 MB.");
        upload("certificate.pdf", Arrays.copyOf(PDF, NewDocument.MOST_BYTES));
        assertThat(field.document()).isPresent();
        assertThat(upload().getMaxFileSize()).isEqualTo(NewDocument.MOST_BYTES);
    }

    @Test
    void theFieldAndItsButtonSayWhatTheFileIs() {
        assertThat(field.getElement().getAttribute("role")).isEqualTo("group");
        String label = field.getElement().getAttribute("aria-labelledby");
        assertThat(field.getChildren()
                        .filter(part -> part.getId().filter(label::equals).isPresent())
                        .map(part -> part.getElement().getText()))
                .containsExactly("Calibration certificate");
        var button = (Button) upload().getUploadButton();
        assertThat(button.getAriaLabel()).contains("Choose a file: Calibration certificate");
    }

    @Test
    void aLinkDownloadsWhatTheCallbackGives() {
        var stored =
                new Document(7, "booth 2.pdf", MediaType.PDF, 123_456, Instant.parse("2026-03-09T10:00:00Z"), "nurse");
        Anchor link = DocumentLink.of(stored, key -> ("file " + key).getBytes(StandardCharsets.US_ASCII));
        UI.getCurrent().add(link);
        var out = new ByteArrayOutputStream();
        test(link).download(out);
        assertThat(link.getText()).isEqualTo("booth 2.pdf (PDF, 123 kB)");
        assertThat(out.toString(StandardCharsets.US_ASCII)).isEqualTo("file 7");
    }
}
