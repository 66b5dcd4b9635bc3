package org.tidewright.husbandry.ph;

import org.tidewright.husbandry.advice.Sources;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Unit;

/** The air outdoors, which all other air is held against. */
public final class OutdoorAir {
    /**
     * Carbon dioxide of the dry air: 419.3 ppm on the mean of the globe in 2023, NOAA Global Monitoring Laboratory; some 3
     * more each year, and in towns tens more on a still morning.
     */
    @Unit("1")
    public static final double SHARE = 420e-6;

    private OutdoorAir() {}

    static String key(Sources sources) {
        return sources.key(
                "Outdoor air, 420 ppm of carbon dioxide",
                Basis.PUBLISHED,
                "NOAA Global Monitoring Laboratory: 419.3 ppm, mean of the globe in 2023; more in towns");
    }
}
