package org.tidewright.husbandry.day;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Room;
import org.tidewright.seawater.carbonate.Alkalinity;
import org.tidewright.seawater.carbonate.CarbonateSystem;
import org.tidewright.seawater.gas.CarbonDioxide;
import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.forecast.Quantity;
import org.tidewright.twin.forecast.UsualDay;
import org.tidewright.twin.forecast.UsualDay.Habits;
import org.tidewright.twin.forecast.UsualDay.Lime;

/**
 * A day of a system, as planned and with other habits.
 *
 * @param planned the day of the plan
 * @param changed the day of the habits asked for; null where they are the plan's
 * @param window the day of the plan with a window open in the evening
 * @param night the day of the plan with limewater at night
 * @param fresh mean pH the same water would have in outdoor air, total scale
 * @param outdoors carbon dioxide of that air, as its share of the moles when dry, in millionths; the twin's room has as many
 *     µatm of it
 * @param moreAlkaline what one dKH more makes of the lowest pH at the same carbon dioxide, and of the highest
 */
public record DayStudy(
        Plan plan,
        Habits habits,
        List<String> tried,
        DayFigures planned,
        @Nullable DayFigures changed,
        DayFigures window,
        DayFigures night,
        @Unit("1") double fresh,
        @Unit("uatm") double outdoors,
        @Unit("1") double[] moreAlkaline) {
    /** What a probe set with NBS buffers reads above the total scale, about. */
    @Unit("1")
    public static final double METER = 0.13;

    /** Hours a window is open in the evening of the days tried. */
    public static final double EVENING = 19 * 3600;

    private static final double EVENING_LASTS = 3 * 3600;

    /** Clean air, 2024 mean; NOAA Global Monitoring Laboratory. */
    private static final double CLEAN = 423;

    /** A window open for three hours of the evening. */
    public static Habits evening() {
        return new Habits(Lime.AS_PLANNED, EVENING, EVENING_LASTS, null, null, null);
    }

    /**
     * Works it through on the twin.
     *
     * @param tried what of the habits is not the plan's, in words
     */
    public static DayStudy of(UsualDay twin, Plan plan, Habits habits, List<String> tried) {
        DayFigures planned = DayFigures.of(twin.asPlanned());
        DayFigures window = DayFigures.of(twin.with(evening()));
        DayFigures night = DayFigures.of(twin.with(new Habits(Lime.AT_NIGHT, 0, 0, null, null, null)));
        DayFigures changed = tried.isEmpty() ? null : DayFigures.of(twin.with(habits));
        Room room = plan.room();
        double outdoors = room.carbonDioxideOutdoors() == null
                ? CLEAN
                : 1e6 * room.carbonDioxideOutdoors().in("1");
        double salinity = Extreme.of(planned.day().course(), Quantity.SALINITY).mean();
        double atRest = 1e6
                * CarbonDioxide.partialPressure(
                        outdoors * 1e-6, planned.temperature().mean(), salinity, MoistAir.STANDARD_PRESSURE);
        double low = planned.water().high();
        double high = planned.water().low();
        double[] more = {
            ph(planned, planned.alkalinity() + 1, low) - ph(planned, planned.alkalinity(), low),
            ph(planned, planned.alkalinity() + 1, high) - ph(planned, planned.alkalinity(), high)
        };
        return new DayStudy(
                plan,
                habits,
                tried,
                planned,
                changed,
                window,
                night,
                ph(planned, planned.alkalinity(), atRest),
                outdoors,
                more);
    }

    /** pH on the total scale of the day's water at an alkalinity under a partial pressure, µatm. */
    static double ph(DayFigures day, @Unit("dKH") double degrees, @Unit("uatm") double pressure) {
        double temperature = day.temperature().mean();
        double salinity = Extreme.of(day.day().course(), Quantity.SALINITY).mean();
        double alkalinity = Alkalinity.perMass(Alkalinity.fromGermanDegrees(degrees), temperature, salinity);
        return CarbonateSystem.at(temperature, salinity)
                .fromAlkalinityAndPartialPressure(alkalinity, pressure * 1e-6)
                .ph();
    }

    /** What to do, and why. */
    public String lead() {
        return DayWords.lead(this);
    }

    /** Why not to chase pH with buffers. */
    public String buffers() {
        return DayWords.buffers(this);
    }

    /** What else the day shows. */
    public List<String> remarks() {
        return DayWords.remarks(this);
    }

    /** What to mind. */
    public List<String> cautions() {
        return DayWords.cautions(this);
    }

    /** Where the numbers come from. */
    public List<Source> sources() {
        return DayWords.sources();
    }
}
