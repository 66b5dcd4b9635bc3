package org.tidewright.husbandry.mixing;

import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.salinity.AbsoluteSalinity;
import org.tidewright.seawater.unit.Unit;

/**
 * A dry mix: how much of its mass is sea salt. The rest is water bound in its crystals and taken up from the air.
 *
 * @param yield sea salt over dry mix
 * @param standardError of the yield
 * @param detail where it is from, in words
 */
public record SaltMix(@Unit("1") double yield, @Unit("1") double standardError, Basis basis, String detail) {
    /** A bag nobody has tried yet: bound and adsorbed water 5 to 15 %, older open bags more. */
    public static final SaltMix USUAL =
            new SaltMix(0.90, 0.03, Basis.FROM_MEMORY, "bound and adsorbed water 5 to 15 %, older open bags more");

    private static final double LEAST = 0.5;

    /** A mix of other proportions than the sea's may conduct a little better than its mass. */
    private static final double MOST = 1.05;

    /** Refuses what cannot be meant. */
    public SaltMix {
        Bounds.within(yield, "1", LEAST, MOST, "yield of the salt mix", "is the mass in grams, the volume in litres?");
        Bounds.within(standardError, "1", 0, 0.5, "standard error of the yield");
    }

    /** What the volume of a batch is the volume of. */
    public enum Filled {
        /** Of the pure water that was put in. */
        PURE_WATER,
        /** Of the salt water that came out. */
        SALT_WATER
    }

    /**
     * A batch that was made and measured.
     *
     * @param mass of dry mix
     * @param massError one standard error
     * @param volumeError one standard error
     * @param temperature of the water when its volume was read
     * @param salinity it came to
     * @param salinityError one standard error of the reading
     */
    public record Made(
            @Unit("kg") double mass,
            @Unit("kg") double massError,
            @Unit("m^3") double volume,
            @Unit("m^3") double volumeError,
            Filled filled,
            @Unit("degC") double temperature,
            @Unit("1") double salinity,
            @Unit("1") double salinityError) {
        /** Refuses what cannot be meant. */
        public Made {
            Bounds.positive(mass, "kg", "mass of dry mix");
            Bounds.positive(volume, "m^3", "volume of the batch");
            Bounds.positive(salinity, "1", "salinity of the batch");
            Bounds.notNegative(massError, "kg", "error of the mass");
            Bounds.notNegative(volumeError, "m^3", "error of the volume");
            Bounds.notNegative(salinityError, "1", "error of the salinity");
        }
    }

    /**
     * The yield that a batch shows.
     *
     * <pre>
     * y = S_A M / m,  M = rho(S, T) V of salt water, or rho_w(T) V + m of pure water and mix
     * (s_y / y)^2 = (s_S / S)^2 + (s_V / V)^2 + (s_m / m)^2
     * </pre>
     *
     * The instrument's own bias goes into the yield, and out again when the same instrument measures the next batch.
     */
    public static SaltMix learned(Made made) {
        double whole = made.filled() == Filled.SALT_WATER
                ? made.volume() * Density.ofSeawater(made.temperature(), made.salinity())
                : made.volume() * Density.ofPureWater(made.temperature()) + made.mass();
        double yield = AbsoluteSalinity.fromPractical(made.salinity()) / 1000 * whole / made.mass();
        double relative = Math.hypot(
                made.salinityError() / made.salinity(),
                Math.hypot(made.volumeError() / made.volume(), made.massError() / made.mass()));
        return new SaltMix(yield, yield * relative, Basis.YOUR_LOG, "one batch you made and measured");
    }
}
