package org.thresholdregister.platform.query;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.audiometry.HearingLevel;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.audiometry.Threshold.NotTested.Reason;

/** Stores a threshold in the notation of the files, so that nothing of it is lost: 25, &gt;95, NR, DNT, CNT or null. */
@Converter(autoApply = true)
class ThresholdConverter implements AttributeConverter<Threshold, @Nullable String> {

    private static final String ABOVE = ">";
    private static final String NO_RESPONSE = "NR";
    private static final String DID_NOT_TEST = "DNT";
    private static final String COULD_NOT_TEST = "CNT";

    @Override
    public @Nullable String convertToDatabaseColumn(@Nullable Threshold threshold) {
        return switch (threshold) {
            case null -> null;
            case Threshold.Measured(HearingLevel level) -> Integer.toString(level.decibels());
            case Threshold.NoResponse(var limit) ->
                limit.map(level -> ABOVE + level.decibels()).orElse(NO_RESPONSE);
            case Threshold.NotTested(Reason reason) ->
                switch (reason) {
                    case NOT_GIVEN -> null;
                    case DID_NOT_TEST -> DID_NOT_TEST;
                    case COULD_NOT_TEST -> COULD_NOT_TEST;
                };
        };
    }

    @Override
    public Threshold convertToEntityAttribute(@Nullable String stored) {
        return switch (stored) {
            case null -> Threshold.notGiven();
            case NO_RESPONSE -> Threshold.noResponse();
            case DID_NOT_TEST -> Threshold.notTested(Reason.DID_NOT_TEST);
            case COULD_NOT_TEST -> Threshold.notTested(Reason.COULD_NOT_TEST);
            default ->
                stored.startsWith(ABOVE)
                        ? Threshold.noResponseAt(Integer.parseInt(stored.substring(ABOVE.length())))
                        : Threshold.measured(Integer.parseInt(stored));
        };
    }
}
