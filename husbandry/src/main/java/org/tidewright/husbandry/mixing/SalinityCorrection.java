package org.tidewright.husbandry.mixing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.limit.Keeping;
import org.tidewright.husbandry.limit.SafeRate;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.ions.WaterParcel;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Salinity that is to be brought elsewhere.
 *
 * @param volume of the system
 * @param temperature of all the water
 * @param now salinity
 * @param target salinity
 * @param evaporation pure water by volume, made up by the top-off
 */
public record SalinityCorrection(
        @Unit("m^3") double volume,
        @Unit("degC") double temperature,
        @Unit("1") double now,
        @Unit("1") double target,
        @Unit("m^3/s") double evaporation,
        Keeping keeping) {
    /** Refuses what cannot be meant. */
    public SalinityCorrection {
        Bounds.positive(volume, "m^3", "volume of the system");
        Bounds.waterTemperature(temperature);
        Bounds.within(now, "1", 0, 60, "salinity now", "is it in mS/cm?");
        Bounds.within(target, "1", 0, 60, "target salinity", "is it in mS/cm?");
        Bounds.within(evaporation, "m^3/s", 0, 1, "evaporation", "is it in litres a day?");
    }

    /** How fast it may go. */
    public SafeRate rate() {
        return SafeRate.of(WaterQuantity.SALINITY, keeping, now, target > now).get(0);
    }

    /** Days that a comfortable pace takes, whole ones. */
    public int days() {
        return (int) Math.ceil(Math.abs(target - now) / rate().comfortable() - 1e-9);
    }

    /**
     * Water to take out and to replace by another water, all at once.
     *
     * <pre>x = V rho (S - S_t) / [rho (S - S_t) + rho_x (S_t - S_x)]</pre>
     *
     * @param other salinity of the other water: 0 is pure water, more than the target a stronger one
     * @return empty where that water is on the wrong side of the target
     */
    public OptionalDouble swap(@Unit("1") double other) {
        return swap(now, target, other);
    }

    private OptionalDouble swap(double from, double to, double other) {
        if (from == to) {
            return OptionalDouble.of(0);
        } else if (Math.signum(to - from) != Math.signum(other - to)) {
            return OptionalDouble.empty();
        }
        double out = Density.ofSeawater(temperature, from) * (from - to);
        double in = Density.ofSeawater(temperature, other) * (to - other);
        return OptionalDouble.of(volume * out / (out + in));
    }

    /**
     * Standard error of {@link #swap} by that of the salinity now.
     *
     * <pre>dx/dS = V rho a / (rho (S - S_t) + a)^2,  a = rho_x (S_t - S_x)</pre>
     */
    public @Unit("m^3") double swapError(@Unit("1") double other, @Unit("1") double nowError) {
        double density = Density.ofSeawater(temperature, now);
        double in = Density.ofSeawater(temperature, other) * (target - other);
        double both = density * (now - target) + in;
        return Math.abs(volume * density * in / (both * both)) * nowError;
    }

    /**
     * The same in equal steps of salinity, one a day at a comfortable pace. Together they are more than the one swap, since
     * each takes out some of what the ones before put in.
     *
     * @return volumes, the first day's first; empty where that water is on the wrong side
     */
    public List<Double> dailySwaps(@Unit("1") double other) {
        List<Double> volumes = new ArrayList<>();
        int days = days();
        for (int day = 0; day < days; day++) {
            double from = now + (target - now) * day / days;
            double to = now + (target - now) * (day + 1) / days;
            OptionalDouble swap = swap(from, to, other);
            if (swap.isEmpty()) {
                return List.of();
            }
            volumes.add(swap.getAsDouble());
        }
        return volumes;
    }

    /**
     * Salt water that raises the salinity when it is topped up with it in place of pure water, at an unchanged level.
     *
     * <pre>L = V [rho(S_t) S_t - rho(S) S] / [rho(S_x) S_x]</pre>
     *
     * @param saltWater salinity of the water topped up with
     * @return volume; empty where the salinity is to fall, or that water is pure
     */
    public OptionalDouble topOff(@Unit("1") double saltWater) {
        if (target < now || saltWater <= 0) {
            return OptionalDouble.empty();
        }
        double salt = Density.ofSeawater(temperature, target) * target - Density.ofSeawater(temperature, now) * now;
        return OptionalDouble.of(volume * salt / (Density.ofSeawater(temperature, saltWater) * saltWater));
    }

    /**
     * The time that topping up with salt water takes: what evaporates makes the room for it. Where that is faster than is
     * comfortable, part of the top-off stays pure, and the time is that of a comfortable pace.
     *
     * @return endless where nothing evaporates; empty as {@link #topOff}
     */
    public OptionalDouble topOffTime(@Unit("1") double saltWater) {
        OptionalDouble litres = topOff(saltWater);
        if (litres.isEmpty()) {
            return litres;
        }
        double slowest = Math.abs(target - now) / rate().comfortable() * SafeRate.DAY;
        return OptionalDouble.of(Math.max(litres.getAsDouble() / evaporation, slowest));
    }

    /** Of the top-off in that time, how much is salt water. */
    public @Unit("1") double saltyShare(@Unit("1") double saltWater) {
        double time = topOffTime(saltWater).orElse(Double.POSITIVE_INFINITY);
        return topOff(saltWater).orElse(0) / (evaporation * time);
    }

    /** Where the salinity comes to when nothing is topped up for so long. */
    public @Unit("1") double untopped(@Unit("s") double time) {
        double lost = evaporation * time * Density.ofPureWater(temperature);
        return WaterParcel.seawaterOfVolume(volume, temperature, now, 0, 0)
                .evaporated(lost)
                .practicalSalinity();
    }

    /**
     * Until the salinity, not topped up, has risen to another.
     *
     * <pre>t = M (1 - S / S_t) / (rho_w E)</pre>
     *
     * @param salinity no less than now
     */
    public @Unit("s") double untoppedUntil(@Unit("1") double salinity) {
        double mass = volume * Density.ofSeawater(temperature, now);
        return mass * (1 - now / salinity) / (evaporation * Density.ofPureWater(temperature));
    }

    /**
     * How to go about it.
     *
     * @param strong salinity of the stronger water at hand, to swap or top up with
     */
    public Advice advice(@Unit("1") double strong) {
        return advice(strong, 0, 0, Origin.TYPED);
    }

    /**
     * How to go about it.
     *
     * @param strong salinity of the stronger water at hand, to swap or top up with
     * @param nowError one standard error of the salinity now; 0 where none was stated
     * @param evaporationError one standard error of the evaporation; 0 likewise
     * @param ofEvaporation where it is from
     */
    public Advice advice(
            @Unit("1") double strong,
            @Unit("1") double nowError,
            @Unit("m^3/s") double evaporationError,
            Origin ofEvaporation) {
        return new SalinityWords(this, strong, nowError, evaporationError, ofEvaporation).advice();
    }
}
