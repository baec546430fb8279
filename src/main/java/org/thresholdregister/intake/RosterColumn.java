package org.thresholdregister.intake;

/** The columns of a roster file. */
public enum RosterColumn implements Column {
    WORKER_ID("worker_id", true, Content.SINGLE_LINE),
    BIRTH_DATE("birth_date", true, Content.SINGLE_LINE),
    SEX("sex", true, Content.SINGLE_LINE),
    FAMILY_NAME("family_name", false, Content.FREE_TEXT),
    GIVEN_NAME("given_name", false, Content.FREE_TEXT),
    HIRE_DATE("hire_date", false, Content.SINGLE_LINE),
    END_DATE("end_date", false, Content.SINGLE_LINE),
    SITE("site", false, Content.FREE_TEXT),
    DEPARTMENT("department", false, Content.FREE_TEXT),
    JOB_TITLE("job_title", false, Content.FREE_TEXT),
    NOISE_GROUP("noise_group", false, Content.FREE_TEXT),
    TWA_DBA("twa_dba", false, Content.SINGLE_LINE),
    ENROLLED_FROM("enrolled_from", false, Content.SINGLE_LINE),
    EMAIL("email", false, Content.SINGLE_LINE),
    LANGUAGE("language", false, Content.SINGLE_LINE);

    private final String columnName;
    private final boolean required;
    private final Content content;

    RosterColumn(String columnName, boolean required, Content content) {
        this.columnName = columnName;
        this.required = required;
        this.content = content;
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
