package org.tidewright.husbandry.forecast;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Limits;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.twin.forecast.Quantity;

/**
 * Bounds beyond which a keeper acts; common practice unless the reason names a source. In the quantity's unit.
 *
 * @param low infinite where there is none
 * @param high infinite where there is none
 */
public record AlarmBand(Quantity quantity, double low, double high, String reason) {
    private static final double NONE = Double.POSITIVE_INFINITY;

    private static final String YOURS = "your plan's own limit";

    /** By the customary limits of a mixed reef; what kills within hours stands first. */
    private static final List<AlarmBand> CUSTOMARY = List.of(
            new AlarmBand(Quantity.OXYGEN_SATURATION, 60, NONE, "below it reef animals breathe hard; common practice"),
            new AlarmBand(Quantity.FREE_AMMONIA, -NONE, 0.02, "gills are hurt before animals die; common practice"),
            new AlarmBand(Quantity.TEMPERATURE, 23, 28, "animals of the reef suffer outside it; common practice"),
            new AlarmBand(Quantity.NITRITE, -NONE, 0.5, "common practice"),
            new AlarmBand(Quantity.SALINITY, 31, 37, "common practice"),
            new AlarmBand(Quantity.PH, 7.57, 8.42, "7.7 and 8.55 on a meter set with dilute buffers; common practice"),
            new AlarmBand(
                    Quantity.ARAGONITE_SATURATION,
                    -NONE,
                    7,
                    "lime may fall out in a cloud (Moras et al. 2022, Biogeosciences 19, 3537)"),
            new AlarmBand(Quantity.ALKALINITY, 6.5, 12, "common practice"),
            new AlarmBand(Quantity.CALCIUM, 360, 500, "common practice"),
            new AlarmBand(Quantity.MAGNESIUM, 1150, 1550, "common practice"),
            new AlarmBand(Quantity.NITRATE, -NONE, 50, "corals pale and algae thrive; common practice"),
            new AlarmBand(Quantity.PHOSPHATE, -NONE, 0.5, "it slows the growth of skeletons; common practice"));

    /** All of them; a plan's own limits come before the customary. */
    public static List<AlarmBand> of(Plan plan) {
        Limits stated = plan.limits();
        if (stated == null) {
            return CUSTOMARY;
        }
        List<AlarmBand> bands = new ArrayList<>();
        for (AlarmBand band : CUSTOMARY) {
            bands.add(
                    switch (band.quantity) {
                        case TEMPERATURE -> band.within(degrees(stated.actColder()), degrees(stated.actWarmer()));
                        case OXYGEN_SATURATION -> band.within(percent(stated.actOxygen()), null);
                        default -> band;
                    });
        }
        return bands;
    }

    private AlarmBand within(@Nullable Double statedLow, @Nullable Double statedHigh) {
        return statedLow == null && statedHigh == null
                ? this
                : new AlarmBand(
                        quantity,
                        statedLow == null ? low : statedLow,
                        statedHigh == null ? high : statedHigh,
                        statedLow != null && (statedHigh != null || high == NONE) ? YOURS : YOURS + ", or " + reason);
    }

    private static @Nullable Double percent(@Nullable Amount stated) {
        return stated == null ? null : Double.valueOf(100 * stated.in("1"));
    }

    private static @Nullable Double degrees(@Nullable Amount stated) {
        return stated == null ? null : Double.valueOf(stated.in("degC"));
    }

    /** Whether a value stands beyond a bound. */
    public boolean isBroken(double value) {
        return value < low || value > high;
    }
}
