package org.thresholdregister.exposure;

import java.util.Optional;
import org.thresholdregister.platform.ui.FilterParameters;

/** The address of a place's page. */
public final class NoisePaths {

    public static final String PLACE = "noise-place";

    private NoisePaths() {}

    public static String place(NoiseSubject subject) {
        return with(subject).pathOf(PLACE);
    }

    /** A place as an address carries it. */
    public static FilterParameters with(NoiseSubject subject) {
        return FilterParameters.NONE
                .with("site", Optional.of(subject.site()))
                .withChoice("kind", Optional.of(subject.kind()))
                .with("name", Optional.of(subject.name()));
    }

    /** The place that an address names; empty where it names none. */
    public static Optional<NoiseSubject> subject(FilterParameters parameters) {
        Optional<String> site = parameters.text("site").filter(text -> text.length() <= NoiseSubject.LONGEST_NAME);
        Optional<String> name =
                parameters.text("name").filter(text -> !text.isBlank() && text.length() <= NoiseSubject.LONGEST_NAME);
        return parameters
                .choice("kind", NoiseSubject.Kind.class)
                .flatMap(kind -> site.flatMap(where -> name.map(what -> new NoiseSubject(kind, where, what))));
    }
}
