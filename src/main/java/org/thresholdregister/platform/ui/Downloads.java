package org.thresholdregister.platform.ui;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.AttachmentType;
import com.vaadin.flow.server.streams.DownloadHandler;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Serializable;

/** Links to files that are written when someone asks for them, and that no browser or proxy keeps a copy of. */
public final class Downloads {

    /** Writes the file; runs as the signed-in user, so that the service's role check applies. */
    @FunctionalInterface
    public interface Content extends Serializable {
        void writeTo(OutputStream out) throws IOException;
    }

    private Downloads() {}

    /**
     * A link that downloads a file.
     *
     * @param fileName name to save under; with dates as in files
     * @param contentType such as {@code text/csv;charset=UTF-8}
     */
    public static Anchor link(String words, String fileName, String contentType, Content content) {
        DownloadHandler handler = event -> {
            event.setFileName(fileName);
            event.setContentType(contentType);
            event.getResponse().setHeader("Cache-Control", "no-store");
            content.writeTo(event.getOutputStream());
        };
        var link = new Anchor(handler, AttachmentType.DOWNLOAD, words);
        link.addClassName("tr-download");
        return link;
    }
}
