package org.thresholdregister.core.attenuation;

/** What somebody wears. */
public sealed interface Worn {

    /** One protector. */
    record One(Protector protector) implements Worn {}

    /** A plug with a muff over it. */
    record Both(Protector plug, Protector muff) implements Worn {

        /** @throws IllegalArgumentException where the two are not a plug and a muff */
        public Both {
            if (plug.kind() == ProtectorKind.MUFF || muff.kind() != ProtectorKind.MUFF) {
                throw new IllegalArgumentException("two worn together are a plug and a muff");
            }
        }
    }
}
