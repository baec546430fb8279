package org.thresholdregister.review;

import jakarta.persistence.Converter;
import org.thresholdregister.platform.query.WordConverter;

@Converter(autoApply = true)
class EvidenceMeansConverter extends WordConverter<Evidence.Means> {
    EvidenceMeansConverter() {
        super(Evidence.Means.class, Evidence.Means::word);
    }
}
