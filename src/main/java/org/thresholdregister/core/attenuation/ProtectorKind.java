package org.thresholdregister.core.attenuation;

/** What kind of protector it is, as far as an estimate depends on it. */
public enum ProtectorKind {
    MUFF("muff"),
    /** Rolled or shaped by the wearer before it goes in. */
    FORMABLE_PLUG("formable-plug"),
    /** Any other plug: premoulded, pushed in, or on a band. */
    OTHER_PLUG("other-plug"),
    /** Moulded to one person's ear. The rules that derate by kind do not name it: it counts as any other plug. */
    CUSTOM_PLUG("custom-plug"),
    /** A plug and a muff worn together. */
    DUAL("dual");

    private final String word;

    ProtectorKind(String word) {
        this.word = word;
    }

    /** The word used in records and addresses. */
    public String word() {
        return word;
    }
}
