package org.tidewright.husbandry.ph;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.carbonate.CarbonDioxideTransfer;
import org.tidewright.twin.law.gas.GasTransfer;
import org.tidewright.twin.law.nutrient.Spread;

/**
 * How readily the water gives carbon dioxide to the air: the weakest number of all, within a factor of two at best.
 *
 * @param area of all open surfaces
 * @param velocity transfer velocity of carbon dioxide through them
 */
public record GasExchange(@Unit("m^2") double area, Spread velocity) {
    private static final double DAY = 86_400;

    /** How a surface is moved, by the transfer velocity of oxygen at 25 °C; from memory. */
    public enum Surface {
        /** Pumps off, a slight draught. */
        STILL(0.3, 1),
        /** Visibly rippled. */
        RIPPLED(1, 3),
        /** Strongly moved, an overflow and a sump. */
        AGITATED(3, 8),
        /** The same with a skimmer or an air stone, as if all of it went through the surface. */
        AGITATED_WITH_SKIMMER(6, 23);

        private final double low;
        private final double high;

        Surface(double low, double high) {
            this.low = low;
            this.high = high;
        }

        private double usual() {
            return Math.sqrt(low * high);
        }
    }

    /** Part of all exchange that goes through a skimmer's air: what it adds to a surface that moves strongly. */
    public static @Unit("1") double skimmerPart() {
        return 1 - Surface.AGITATED.usual() / Surface.AGITATED_WITH_SKIMMER.usual();
    }

    /** Refuses what cannot be meant. */
    public GasExchange {
        Bounds.within(area, "m^2", 1e-3, 1e4, "area of the surface", "is it in cm²?");
        Bounds.positive(velocity.low(), "m/s", "transfer velocity");
    }

    /** By how the surface looks. */
    public static GasExchange of(@Unit("m^2") double area, Surface surface, @Unit("degC") double temperature) {
        double slower = CarbonDioxideTransfer.overOxygen(temperature, GasTransfer.RIPPLED);
        return new GasExchange(area, Spread.of(surface.low, surface.usual(), surface.high, slower / DAY));
    }

    /** Known exactly. */
    public static GasExchange of(@Unit("m^2") double area, @Unit("m/s") double velocity) {
        return new GasExchange(area, new Spread(velocity, velocity, velocity));
    }

    /** Carbon dioxide given off for each atmosphere that the water's pressure stands above the air's. */
    Spread conductance(AiredWater water) {
        return velocity.times(area * water.solubility());
    }

    /**
     * By how much the water's pressure stands above the air's where it gives off as much as it makes.
     *
     * <pre>p_w - p_air = R / (k A rho K0)</pre>
     *
     * @param made R, carbon dioxide made and not used up in the water
     * @param velocity k, one of the spread
     */
    public @Unit("atm") double excess(@Unit("mol/s") double made, @Unit("m/s") double velocity, AiredWater water) {
        return made / (velocity * area * water.solubility());
    }
}
