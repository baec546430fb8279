package org.thresholdregister.core.aging;

/** Published pairs of age correction tables, one for each sex, and how they are called. */
public enum AgeTables {
    /** 29 CFR 1910.95 Appendix F, Tables F-1 and F-2. */
    OSHA_APPENDIX_F(
            AgeCorrectionTable.load("Table F-1", "osha-table-f1-male.csv"),
            AgeCorrectionTable.load("Table F-2", "osha-table-f2-female.csv")),
    /** 30 CFR 62, Tables 62-3 and 62-4; the values differ from Appendix F at one place, women of 51 at 3000 Hz. */
    MSHA_PART_62(
            AgeCorrectionTable.load("Table 62-3", "msha-table-62-3.csv"),
            AgeCorrectionTable.load("Table 62-4", "msha-table-62-4.csv"));

    private final AgeCorrectionTable men;
    private final AgeCorrectionTable women;

    AgeTables(AgeCorrectionTable men, AgeCorrectionTable women) {
        this.men = men;
        this.women = women;
    }

    public AgeCorrectionTable of(Sex sex) {
        return switch (sex) {
            case MALE -> men;
            case FEMALE -> women;
        };
    }
}
