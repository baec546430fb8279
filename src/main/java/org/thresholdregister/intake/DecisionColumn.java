package org.thresholdregister.intake;

/** The columns of a decisions file; all are required. */
public enum DecisionColumn implements Column {
    WORKER_ID("worker_id", Content.SINGLE_LINE),
    EAR("ear", Content.SINGLE_LINE),
    TEST_DATE("test_date", Content.SINGLE_LINE),
    KIND("kind", Content.SINGLE_LINE),
    DATE("date", Content.SINGLE_LINE),
    BY("by", Content.FREE_TEXT),
    REASON("reason", Content.FREE_TEXT);

    private final String columnName;
    private final Content content;

    DecisionColumn(String columnName, Content content) {
        this.columnName = columnName;
        this.content = content;
    }

    @Override
    public String columnName() {
        return columnName;
    }

    @Override
    public boolean required() {
        return true;
    }

    @Override
    public Content content() {
        return content;
    }
}
