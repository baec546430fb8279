package org.thresholdregister.core.meaning;

import java.util.List;

/** Something that an audiogram means by a published definition, with what it rests on and what it is not. */
public interface Meaning {

    Basis basis();

    /** Never empty. */
    List<Caveat> isNot();
}
