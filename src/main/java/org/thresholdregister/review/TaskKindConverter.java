package org.thresholdregister.review;

import jakarta.persistence.Converter;
import org.thresholdregister.platform.query.WordConverter;

@Converter(autoApply = true)
class TaskKindConverter extends WordConverter<TaskKind> {
    TaskKindConverter() {
        super(TaskKind.class, TaskKind::word);
    }
}
