package org.tidewright.husbandry.limit;

import java.util.List;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.seawater.carbonate.Alkalinity;
import org.tidewright.seawater.unit.Unit;

/**
 * How much a quantity may be moved on purpose within a time. All of them are common practice among keepers: no trial
 * stands behind them, and they lie on the careful side.
 *
 * @param comfortable asks for no thought
 * @param ceiling is not to be passed
 * @param span the time both are for
 */
public record SafeRate(
        @Unit("*") double comfortable,
        @Unit("*") double ceiling,
        @Unit("s") double span) {
    private static final double HOUR = 3600;
    /** Seconds in a day. */
    @Unit("s")
    public static final double DAY = 86_400;

    private static final double MG_PER_L = 1e-3; // kg/m^3

    /**
     * The rates for a quantity; none where practice has none, as for nitrate that rises.
     *
     * @param before what it stands at, since some are shares of it
     * @param rises which way it is moved
     */
    public static List<SafeRate> of(WaterQuantity quantity, Keeping keeping, @Unit("*") double before, boolean rises) {
        return switch (quantity) {
            case TEMPERATURE -> List.of(new SafeRate(0.5, 1, HOUR), perDay(1, 2));
            case SALINITY ->
                List.of(keeping == Keeping.FISH ? perDay(rises ? 1 : 2, 2) : rises ? perDay(0.5, 1) : perDay(1, 2));
            case ALKALINITY -> {
                double degree = Alkalinity.GERMAN_DEGREE;
                yield List.of(perDay((keeping == Keeping.SMALL_POLYPS ? 0.3 : 0.5) * degree, degree));
            }
            case CALCIUM -> List.of(perDay(20 * MG_PER_L, 50 * MG_PER_L));
            case MAGNESIUM -> List.of(perDay(50 * MG_PER_L, 100 * MG_PER_L));
            case NITRATE -> rises ? List.of() : List.of(perDay(0.10 * before, 0.25 * before));
            case PHOSPHATE -> rises ? List.of() : List.of(perDay(0.02 * MG_PER_L, 0.05 * MG_PER_L));
            default -> List.of();
        };
    }

    private static SafeRate perDay(double comfortable, double ceiling) {
        return new SafeRate(comfortable, ceiling, DAY);
    }

    /** Whether a step at once is comfortable. */
    public boolean isComfortable(@Unit("*") double step) {
        return Math.abs(step) <= comfortable * (1 + 1e-9);
    }

    /** Whether a step at once passes the ceiling. */
    public boolean isPassedBy(@Unit("*") double step) {
        return Math.abs(step) > ceiling * (1 + 1e-9);
    }
}
