package org.thresholdregister.core.attenuation;

/**
 * One protector.
 *
 * @param kind never {@link ProtectorKind#DUAL}, which is {@link Worn.Both}
 */
public record Protector(String name, ProtectorKind kind, LabelValues label) {

    /** @throws IllegalArgumentException for two worn together */
    public Protector {
        if (kind == ProtectorKind.DUAL) {
            throw new IllegalArgumentException("a plug and a muff are two protectors");
        }
    }
}
