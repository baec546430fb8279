package org.thresholdregister.platform.security;

/** What a person does in the programme; it decides what that person is shown. */
public enum Role {
    /** Enters tests, schedules retests, keeps the health record of the own sites. */
    NURSE("Nurse"),
    /** Reviews the year's shifts and cases of the own sites. */
    SAFETY_OFFICER("Safety officer"),
    /** An audiologist or physician: decides on the cases sent for review. */
    PROFESSIONAL_SUPERVISOR("Professional supervisor"),
    /** Reads counts of the own sites, never a person's hearing. */
    PLANT_MANAGER("Plant manager"),
    /** Keeps the accounts and reads the audit trail, with ids only. */
    ADMINISTRATOR("Administrator");

    private final String label;

    Role(String label) {
        this.label = label;
    }

    /** The role in words, as the screen shows it. */
    public String label() {
        return label;
    }
}
