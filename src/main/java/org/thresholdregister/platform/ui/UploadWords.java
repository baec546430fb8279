package org.thresholdregister.platform.ui;

import com.vaadin.flow.component.upload.UploadI18N;
import java.util.List;

/** What a place for one file says while a file comes. */
public final class UploadWords {

    private UploadWords() {}

    /**
     * The words.
     *
     * @param tooBig what is said of a file that is too large, as a whole sentence
     * @param wrongKind what is said of a file of another kind, as a whole sentence
     */
    public static UploadI18N forOneFile(String tooBig, String wrongKind) {
        return new UploadI18N()
                .setDropFiles(
                        new UploadI18N.DropFiles().setOne("or drop it here").setMany("or drop it here"))
                .setError(new UploadI18N.Error()
                        .setTooManyFiles("One file has its place here. Remove the one that is there first.")
                        .setFileIsTooBig(tooBig)
                        .setIncorrectFileType(wrongKind))
                .setFile(new UploadI18N.File()
                        .setRemove("Remove")
                        .setRetry("Try again")
                        .setStart("Start"))
                .setUploading(new UploadI18N.Uploading()
                        .setStatus(new UploadI18N.Uploading.Status()
                                .setConnecting("On its way")
                                .setProcessing("Arriving")
                                .setStalled("Held up")
                                .setHeld("Waiting"))
                        .setRemainingTime(new UploadI18N.Uploading.RemainingTime()
                                .setPrefix("time left: ")
                                .setUnknown("time left not known"))
                        .setError(new UploadI18N.Uploading.Error()
                                .setServerUnavailable("The register could not be reached. Try again.")
                                .setUnexpectedServerError("It could not be taken. Try again.")
                                .setForbidden("It was not taken.")
                                .setFileTooLarge("It was not taken, since it is too large.")))
                .setUnits(List.of("bytes", "kB", "MB", "GB"));
    }
}
