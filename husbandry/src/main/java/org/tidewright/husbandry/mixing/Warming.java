package org.tidewright.husbandry.mixing;

import java.util.List;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.seawater.heat.VapourPressure;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.heat.CarrierEvaporation;
import org.tidewright.twin.law.heat.LidFilm;
import org.tidewright.twin.law.heat.Radiation;
import org.tidewright.twin.law.heat.SurfaceConvection;
import org.tidewright.twin.law.heat.TankHeatCapacity;

/**
 * A batch of new water that a heater warms. Of its vessel nothing is known but that it stands free: it is taken to be a drum
 * as high as it is wide.
 *
 * @param salinity practical
 * @param from temperature of the batch
 * @param to temperature wanted
 * @param power of the heater, all of it in the water
 * @param room temperature of the room
 * @param humidity of the room, relative
 * @param covered with a lid that lies on
 */
public record Warming(
        @Unit("m^3") double volume,
        @Unit("1") double salinity,
        @Unit("degC") double from,
        @Unit("degC") double to,
        @Unit("W") double power,
        @Unit("degC") double room,
        @Unit("1") double humidity,
        boolean covered) {
    /** Through a pane or a thin wall of plastic to still air; common practice, 7 W/(m² K) for glass. */
    private static final double WALL = 7;

    /** Refuses what cannot be meant. */
    public Warming {
        Bounds.positive(volume, "m^3", "volume of the batch");
        Bounds.positive(power, "W", "power of the heater");
        Bounds.waterTemperature(from);
        Bounds.within(to, "degC", from, Bounds.HOTTEST_WATER, "temperature wanted", "is it colder than the batch?");
        Bounds.within(humidity, "1", 0, 1, "relative humidity", "is it in percent?");
    }

    /** Heat that warms it by one kelvin, at the mean of both temperatures. */
    public @Unit("J/K") double capacity() {
        return TankHeatCapacity.of(volume, (from + to) / 2, salinity, 0, 0);
    }

    /**
     * The time if no heat were lost: it takes no less.
     *
     * <pre>t = C (T_2 - T_1) / P</pre>
     */
    public @Unit("s") double shortest() {
        return capacity() * (to - from) / power;
    }

    /**
     * Heat lost at the end, when it is warmest: through side and bottom, and over the top.
     *
     * <pre>d^3 = 4 V / pi,  sides and bottom 5/4 pi d^2,  top pi d^2 / 4</pre>
     */
    public @Unit("W") double greatestLoss() {
        double width = Math.cbrt(4 * volume / Math.PI);
        double top = Math.PI * width * width / 4;
        double walls = 5 * top;
        double over = to - room;
        return WALL * walls * over + top * topFlux();
    }

    private double topFlux() {
        if (covered) {
            return LidFilm.coefficient(to, room) * (to - room);
        }
        double ofWater = VapourPressure.ofSeawater(to, salinity);
        double ofAir = MoistAir.vapourPressure(room, humidity);
        double latent = CarrierEvaporation.heatPerPascal(CarrierEvaporation.AGITATED, 0) * (ofWater - ofAir);
        return latent
                + SurfaceConvection.heatFlux(latent, to, room, ofWater, ofAir)
                + Radiation.film(Radiation.EMISSIVITY_OF_WATER, to, room) * (to - room);
    }

    /**
     * The time if the greatest loss held from the beginning: it takes no more. Endless where the loss is no less than the
     * heater's power.
     *
     * <pre>t = C (T_2 - T_1) / (P - q)</pre>
     */
    public @Unit("s") double longest() {
        double left = power - Math.max(0, greatestLoss());
        return left > 0 ? capacity() * (to - from) / left : Double.POSITIVE_INFINITY;
    }

    /** How long before it is wanted to switch on. */
    public Advice advice() {
        Sources sources = new Sources();
        String heat = sources.key(
                "Heat that warms salt water", Basis.PUBLISHED, "specific heat: Millero, Perron and Desnoyers 1973");
        String loss = sources.key(
                "Heat lost by the vessel",
                Basis.COMMON_PRACTICE,
                "a free-standing drum as high as wide, 7 W/(m² K) through its walls; evaporation by Carrier's equation");
        Figure shortest = Telling.time(shortest());
        Figure longest = Telling.time(longest());
        Sentence lead = to == from
                ? Sentence.of("Leave the heater off: the batch stands at ", Figure.exact(Measure.TEMPERATURE, to), ".")
                : Double.isInfinite(longest())
                        ? Sentence.of(
                                "Cover the batch or take a stronger heater: near the end it may lose ",
                                Sentence.figure(Figure.exact(Measure.POWER, greatestLoss()), loss),
                                " of the ",
                                Figure.exact(Measure.POWER, power),
                                " it is given, and may never come to ",
                                Figure.exact(Measure.TEMPERATURE, to),
                                ".")
                        : Sentence.of(
                                "Switch the heater on ",
                                Sentence.figure(longest, loss),
                                " before you want the water: from ",
                                Figure.exact(Measure.TEMPERATURE, from),
                                " to ",
                                Figure.exact(Measure.TEMPERATURE, to),
                                " takes ",
                                Figure.exact(Measure.POWER, power),
                                " at least ",
                                Sentence.figure(shortest, heat),
                                ", and with what the vessel loses no more than the first of these times.");
        return new Advice(
                lead,
                List.of(),
                List.of(
                        new Advice.Told("no less than", shortest, heat),
                        new Advice.Told("no more than", longest, loss)),
                List.of(Sentence.of(
                        "Heat: ",
                        Figure.exact(Measure.ENERGY, capacity() * (to - from)),
                        "; the vessel loses up to ",
                        Figure.exact(Measure.POWER, Math.max(0, greatestLoss())),
                        ".")),
                List.of(
                        "Put the heater under water before it is switched on, and switch it off before it is lifted out;"
                                + " keep it off the wall of a plastic vessel, and let its plug hang in a drip loop behind a"
                                + " residual-current device. Stir while it warms."),
                sources.all());
    }
}
