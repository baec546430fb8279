package org.thresholdregister.intake;

/** How long the texts may be that the register keeps. */
final class TextLimits {

    private TextLimits() {}

    static int mostCharacters(Column column) {
        return switch (column) {
            case RosterColumn roster ->
                switch (roster) {
                    case WORKER_ID -> 100;
                    case EMAIL -> 320;
                    default -> 200;
                };
            case AudiogramColumn audiogram -> audiogram == AudiogramColumn.REMARK ? 2000 : 200;
            case DecisionColumn decision -> decision == DecisionColumn.REASON ? 2000 : 200;
            default -> throw new IllegalArgumentException("no column of a file that is kept");
        };
    }
}
