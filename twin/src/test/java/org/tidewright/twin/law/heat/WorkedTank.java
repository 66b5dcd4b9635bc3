package org.tidewright.twin.law.heat;

import java.util.function.DoubleUnaryOperator;
import org.tidewright.seawater.heat.LatentHeat;
import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.seawater.heat.VapourPressure;

/**
 * The 400 L system of the worked examples, its laws summed to one heat balance. The inputs stand in the heading of the
 * reference file; h_in, activity and so on are the ones each group of rows states.
 */
record WorkedTank(Wall wall, double bottom, boolean lid, double activity, double airSpeed) {
    static final double SALINITY = 35;
    static final double WALLS = 1.98; // m^2
    static final double BOTTOM = 0.72; // m^2
    static final double SURFACE = 0.675; // m^2
    static final double CAPACITY = TankHeatCapacity.of(0.400, 25.5, SALINITY, 40, 91.8);

    /** Circulating, open, rippled. */
    static final WorkedTank RUNNING = new WorkedTank(
            Wall.ofGlass(0.55, 0.012, Wall.CIRCULATED),
            WallConduction.BOTTOM_ON_FOAM_AND_WOOD,
            false,
            CarrierEvaporation.RIPPLED,
            0);

    /** Pumps off, open, still. */
    static final WorkedTank STILL = new WorkedTank(
            Wall.ofGlass(0.55, 0.012, Wall.STILL),
            WallConduction.BOTTOM_ON_FOAM_AND_WOOD,
            false,
            CarrierEvaporation.STILL,
            0);

    WorkedTank withLid() {
        return new WorkedTank(wall, bottom, true, activity, airSpeed);
    }

    WorkedTank withFan() {
        return new WorkedTank(wall, bottom, lid, activity, 1);
    }

    WorkedTank behindFoam() {
        double insulatedBottom = WallConduction.insulated(bottom, 0.020, Wall.FOAM);
        return new WorkedTank(wall.behind(0.020, Wall.FOAM), insulatedBottom, lid, activity, airSpeed);
    }

    /** Heat lost in W; vapour of the room in Pa. */
    double loss(double water, double room, double vapour) {
        double solid = WALLS * WallConduction.through(wall, water, room).transmittance() + BOTTOM * bottom;
        double surface = lid
                ? LidFilm.coefficient(water, room) * (water - room)
                : evaporative(water, vapour) + dry(water, room, vapour);
        return solid * (water - room) + SURFACE * surface;
    }

    /** Heat lost that warms the room: all but evaporation. */
    double sensibleLoss(double water, double room, double vapour) {
        return loss(water, room, vapour) - (lid ? 0 : SURFACE * evaporative(water, vapour));
    }

    double evaporative(double water, double vapour) {
        double latent = LatentHeat.ofEvaporation(water);
        return latent
                * CarrierEvaporation.massFlux(
                        activity, airSpeed, VapourPressure.ofSeawater(water, SALINITY), vapour, latent);
    }

    private double dry(double water, double room, double vapour) {
        double radiation = Radiation.film(Radiation.EMISSIVITY_OF_WATER, water, room) * (water - room);
        return radiation
                + SurfaceConvection.heatFlux(
                        evaporative(water, vapour), water, room, VapourPressure.ofSeawater(water, SALINITY), vapour);
    }

    /** Hours until the water, from 25.5 degC, reaches a mark; or its temperature after a time. */
    Course under(double power, DoubleUnaryOperator room, DoubleUnaryOperator vapour) {
        return new Course((seconds, water) ->
                (power - loss(water, room.applyAsDouble(seconds), vapour.applyAsDouble(seconds))) / CAPACITY);
    }

    static DoubleUnaryOperator always(double value) {
        return seconds -> value;
    }

    /** From one temperature to another with a time constant in hours. */
    static DoubleUnaryOperator relaxing(double from, double to, double hours) {
        return seconds -> to + (from - to) * Math.exp(-seconds / (3600 * hours));
    }

    static DoubleUnaryOperator humid(DoubleUnaryOperator room, double relativeHumidity) {
        return seconds -> MoistAir.vapourPressure(room.applyAsDouble(seconds), relativeHumidity);
    }

    /** dT/dt of one temperature. */
    interface Slope {
        double at(double seconds, double water);
    }

    /** The classical Runge-Kutta method with steps of a minute, starting at 25.5 degC. */
    record Course(Slope slope) {
        private static final double STEP = 60;

        double hoursTo(double mark) {
            double water = 25.5;
            boolean above = water > mark;
            for (double seconds = 0; seconds < 1000 * 3600; seconds += STEP) {
                double next = step(seconds, water);
                if (next > mark != above) {
                    return (seconds + STEP * (mark - water) / (next - water)) / 3600;
                }
                water = next;
            }
            throw new AssertionError("never reaches " + mark + " degC; at " + water + " after 1000 h");
        }

        double temperatureAfter(double hours) {
            double water = 25.5;
            for (double seconds = 0; seconds < hours * 3600; seconds += STEP) {
                water = step(seconds, water);
            }
            return water;
        }

        private double step(double t, double y) {
            double a = slope.at(t, y);
            double b = slope.at(t + STEP / 2, y + STEP / 2 * a);
            double c = slope.at(t + STEP / 2, y + STEP / 2 * b);
            double d = slope.at(t + STEP, y + STEP * c);
            return y + STEP / 6 * (a + 2 * b + 2 * c + d);
        }
    }
}
