package org.tidewright.husbandry.ph;

import org.tidewright.seawater.carbonate.CarbonateState;
import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.biota.MacroalgaeGrowth;
import org.tidewright.twin.law.carbonate.Limewater;
import org.tidewright.twin.law.nutrient.Spread;

/**
 * Something that can be done about a pH, and where the reading would come to once it has had its effect, all else as it is.
 * Steady balances of carbon dioxide: what the water makes goes on, so that its pressure stays as far above its air's as it
 * is; only algae are followed through the night, since their carbon does not leave within one.
 */
public sealed interface Lever {
    /** Below it no balance as simple as these holds: the limewater or the algae meet other limits first. */
    @Unit("atm")
    double LEAST_PRESSURE = 100e-6;

    private static double bounded(double pressure) {
        return Math.max(LEAST_PRESSURE, pressure);
    }

    /** What it does to a case; whether enough is known is asked by {@link #needs}. */
    Effect on(PhCase water);

    /** Why its effect cannot be told; empty where it can. */
    default String needs(PhCase water) {
        return "";
    }

    /**
     * A window opened until the room's air comes to a share of carbon dioxide.
     *
     * <pre>p' = p + p_x - p_room</pre>
     */
    record Window(@Unit("1") double share) implements Lever {
        public Window {
            Bounds.within(share, "1", 200e-6, 0.01, "share of carbon dioxide in the aired room", "is it in ppm?");
        }

        @Override
        public Effect on(PhCase water) {
            return water.ofAir(room -> share - room);
        }
    }

    /**
     * Other air to the skimmer, from outdoors or through an absorber.
     *
     * <pre>p' = p + f (p_x - p_room)</pre>
     *
     * @param part f of all exchange of gas that goes through that air
     * @param share carbon dioxide in it, 420 ppm from outdoors, some 50 after an absorber
     */
    record SkimmerAir(@Unit("1") double part, @Unit("1") double share) implements Lever {
        public SkimmerAir {
            Bounds.within(part, "1", 0, 1, "part of the exchange through the skimmer's air", "is it in percent?");
            Bounds.within(share, "1", 0, 0.01, "share of carbon dioxide in the skimmer's air", "is it in ppm?");
        }

        @Override
        public Effect on(PhCase water) {
            return water.ofAir(room -> part * (share - room));
        }
    }

    /** What limewater takes the place of, when alkalinity is to stay as it is. */
    enum Replaced {
        /** Brings a carbon with each charge. */
        BICARBONATE(1),
        /** Brings half a carbon with each charge. */
        CARBONATE(0.5);

        private final double carbon;

        Replaced(double carbon) {
            this.carbon = carbon;
        }
    }

    /**
     * Saturated limewater in place of as much other alkalinity: it brings no carbon, so that much less has to leave.
     *
     * <pre>p' = p - b n A / (k A_s rho K0),  b 1 in place of bicarbonate, 1/2 of carbonate</pre>
     *
     * @param flow n, spread over the day or the night
     * @param reservoir its temperature
     */
    record LimewaterInstead(
            @Unit("m^3/s") double flow,
            Replaced replaced,
            @Unit("degC") double reservoir) implements Lever {
        public LimewaterInstead {
            Bounds.within(flow, "m^3/s", 0, 1e-3, "limewater", "is it in litres a day?");
            Bounds.waterTemperature(reservoir);
        }

        /** Alkalinity it brings. */
        @Unit("mol/s")
        double alkalinity() {
            return flow * Limewater.alkalinity(Limewater.saturated(reservoir));
        }

        @Override
        public String needs(PhCase water) {
            return water.exchange().isEmpty() ? "the area of the surface and how it is moved" : "";
        }

        @Override
        public Effect on(PhCase water) {
            Spread conductance = water.exchange().orElseThrow().conductance(water.water());
            double spared = alkalinity() * replaced.carbon;
            return water.effect(
                    bounded(water.pressure() - spared / conductance.high()),
                    bounded(water.pressure() - spared / conductance.usual()),
                    bounded(water.pressure() - spared / conductance.low()));
        }
    }

    /**
     * Algae lit at night, read at its end. Their carbon is a square wave, and the water answers it as a tank with one time
     * constant: in a night of L of a day T
     *
     * <pre>
     * DIC' = DIC - u tau [1 - exp(-L/tau)] / [1 - exp(-T/tau)],  u = U T / (L rho V)
     * tau = (rho V / k A_s rho K0) dDIC/dp
     * </pre>
     *
     * and exp(-(T - L)/tau) of that at the end of their dark, which is what algae lit by day do for the morning.
     *
     * @param harvest wet mass taken out, on the mean, as much as grows
     * @param lit L
     * @param movedFromDay whether they are there already, lit by day
     */
    record AlgaeAtNight(
            @Unit("kg/s") double harvest, @Unit("s") double lit, boolean movedFromDay) implements Lever {
        private static final double DAY = 86_400;

        public AlgaeAtNight {
            Bounds.within(harvest, "kg/s", 0, 1e-3, "harvest of algae", "is it in grams a week?");
            Bounds.within(lit, "s", 3600, DAY, "time the algae are lit", "is it in hours?");
        }

        /** Carbon they take up, on the mean of the day. */
        @Unit("mol/s")
        double carbon() {
            return harvest * MacroalgaeGrowth.DRY.usual() * MacroalgaeGrowth.CARBON.usual();
        }

        @Override
        public String needs(PhCase water) {
            if (water.exchange().isEmpty()) {
                return "the area of the surface and how it is moved";
            }
            return water.volume().isEmpty() ? "the volume of the system" : "";
        }

        @Override
        public Effect on(PhCase water) {
            Spread conductance = water.exchange().orElseThrow().conductance(water.water());
            return water.effect(
                    bounded(after(water, conductance.high())),
                    bounded(after(water, conductance.usual())),
                    bounded(after(water, conductance.low())));
        }

        private double after(PhCase water, double conductance) {
            AiredWater aired = water.water();
            double mass = water.volume().orElseThrow() * Density.ofSeawater(aired.temperature(), aired.salinity());
            CarbonateState state = water.state();
            double carbonPerPressure = state.inorganicCarbon() / (state.revelleFactor() * state.partialPressure());
            double tau = mass * carbonPerPressure / conductance;
            double lightEnds = -carbon() * DAY / (lit * mass) * tau * Math.expm1(-lit / tau) / Math.expm1(-DAY / tau);
            double darkEnds = lightEnds * Math.exp(-(DAY - lit) / tau);
            double change = movedFromDay ? lightEnds - darkEnds : lightEnds;
            double most = -0.5 * state.inorganicCarbon();
            return aired.withCarbon(state, Math.max(most, change)).partialPressure();
        }
    }

    /** More alkalinity, once the air has had its way: the pressure is what it was. */
    record MoreAlkalinity(@Unit("mol/m^3") double added) implements Lever {
        public MoreAlkalinity {
            Bounds.within(added, "mol/m^3", 0, 5, "alkalinity added", "is it in dKH?");
        }

        @Override
        public Effect on(PhCase water) {
            double ph = AiredWater.meter(water.water().under(water.reading().alkalinity() + added, water.pressure()));
            double gain = ph - water.reading().ph();
            return new Effect(water.pressure(), ph, gain, gain, water.pressure());
        }
    }
}
