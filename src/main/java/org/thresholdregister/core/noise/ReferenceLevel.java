package org.thresholdregister.core.noise;

import java.util.List;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.regulation.Provenance;

/**
 * A level of LEX,8h that a rule outside the 5 dB rules of the United States speaks of.
 *
 * @param whose whose rule it is
 * @param name what it is called there
 * @param strictly whether it has to be exceeded; otherwise reaching it is enough
 */
public record ReferenceLevel(
        String whose, String name, double dba, boolean strictly, Citation basis, Provenance provenance) {

    private static final Citation UK = new Citation("Control of Noise at Work Regulations 2005 (SI 2005/1643)");

    /** The lowest first. Protectors are not counted; for Britain's limit value they would be. */
    public static final List<ReferenceLevel> ALL = List.of(
            new ReferenceLevel("Britain", "lower exposure action value", 80, false, UK, Provenance.LOOKED_UP),
            new ReferenceLevel(
                    "Alberta",
                    "level from which exposure is assessed",
                    82,
                    true,
                    new Citation("Alberta OHS Code Part 16"),
                    Provenance.LOOKED_UP),
            new ReferenceLevel("Britain", "upper exposure action value", 85, false, UK, Provenance.LOOKED_UP),
            new ReferenceLevel(
                    "Alberta",
                    "occupational exposure limit",
                    85,
                    true,
                    new Citation("Alberta OHS Code Part 16"),
                    Provenance.LOOKED_UP),
            new ReferenceLevel(
                    "US Department of Defense",
                    "hazardous noise",
                    85,
                    false,
                    new Citation("DoD Instruction 6055.12"),
                    Provenance.UNVERIFIED),
            new ReferenceLevel("Britain", "exposure limit value", 87, true, UK, Provenance.LOOKED_UP));

    public boolean isMetBy(DailyExposureLevel level) {
        return strictly ? Tolerance.exceeds(level.decibels(), dba) : Tolerance.reaches(level.decibels(), dba);
    }
}
