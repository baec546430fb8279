package org.thresholdregister.intake;

import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;

/** The columns of an audiograms file: one row per test. */
public enum AudiogramColumn implements Column {
    WORKER_ID("worker_id", true, Content.SINGLE_LINE),
    TEST_DATE("test_date", true, Content.SINGLE_LINE),
    PURPOSE("purpose", true, Content.SINGLE_LINE),
    LEFT_500("left_500", true, Content.SINGLE_LINE),
    LEFT_1000("left_1000", true, Content.SINGLE_LINE),
    LEFT_2000("left_2000", true, Content.SINGLE_LINE),
    LEFT_3000("left_3000", true, Content.SINGLE_LINE),
    LEFT_4000("left_4000", true, Content.SINGLE_LINE),
    LEFT_6000("left_6000", true, Content.SINGLE_LINE),
    LEFT_8000("left_8000", true, Content.SINGLE_LINE),
    RIGHT_500("right_500", true, Content.SINGLE_LINE),
    RIGHT_1000("right_1000", true, Content.SINGLE_LINE),
    RIGHT_2000("right_2000", true, Content.SINGLE_LINE),
    RIGHT_3000("right_3000", true, Content.SINGLE_LINE),
    RIGHT_4000("right_4000", true, Content.SINGLE_LINE),
    RIGHT_6000("right_6000", true, Content.SINGLE_LINE),
    RIGHT_8000("right_8000", true, Content.SINGLE_LINE),
    HOURS_SINCE_NOISE("hours_since_noise", false, Content.SINGLE_LINE),
    PROTECTORS_WORN("protectors_worn", false, Content.SINGLE_LINE),
    TESTER("tester", false, Content.FREE_TEXT),
    INSTRUMENT("instrument", false, Content.FREE_TEXT),
    TRANSDUCER("transducer", false, Content.FREE_TEXT),
    REMARK("remark", false, Content.FREE_TEXT),
    LEFT_1000_REPEAT("left_1000_repeat", false, Content.SINGLE_LINE),
    RIGHT_1000_REPEAT("right_1000_repeat", false, Content.SINGLE_LINE);

    private static final AudiogramColumn[] ALL = values();

    private final String columnName;
    private final boolean required;
    private final Content content;

    AudiogramColumn(String columnName, boolean required, Content content) {
        this.columnName = columnName;
        this.required = required;
        this.content = content;
    }

    /** The column that holds the threshold of this ear at this frequency. */
    public static AudiogramColumn of(Ear ear, Frequency frequency) {
        AudiogramColumn first = ear == Ear.LEFT ? LEFT_500 : RIGHT_500;
        return ALL[first.ordinal() + frequency.ordinal()];
    }

    /** The column that holds the second reading of this ear at 1000 Hz. */
    public static AudiogramColumn repeatAt1000Hz(Ear ear) {
        return ear == Ear.LEFT ? LEFT_1000_REPEAT : RIGHT_1000_REPEAT;
    }

    @Override
    public String columnName() {
        return columnName;
    }

    @Override
    public boolean required() {
        return required;
    }

    @Override
    public Content content() {
        return content;
    }
}
