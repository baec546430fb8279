package org.thresholdregister.intake;

import java.util.Optional;

/** The files of one import or evaluation. */
public record FileSet(Optional<SourceFile> roster, Optional<SourceFile> audiograms, Optional<SourceFile> decisions) {

    public static FileSet of(SourceFile roster, SourceFile audiograms) {
        return new FileSet(Optional.of(roster), Optional.of(audiograms), Optional.empty());
    }

    public FileSet withDecisions(SourceFile file) {
        return new FileSet(roster, audiograms, Optional.of(file));
    }
}
