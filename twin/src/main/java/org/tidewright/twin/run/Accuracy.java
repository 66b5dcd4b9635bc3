package org.tidewright.twin.run;

import org.tidewright.numerics.ode.Tolerance;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Shape;
import org.tidewright.twin.contract.Stock;

/**
 * How closely a run follows its mechanisms. The figures are local errors per step, far below what any input is known to.
 *
 * @param relative share of each stock
 * @param volume least error of a body's water
 * @param temperature least error of a body's temperature
 * @param oxygen least error of a body's dissolved oxygen
 * @param longestStep so that no crossing is stepped over twice
 * @param grains least error of every other stock, in {@linkplain Stock#grain() grains}
 */
public record Accuracy(
        @Unit("1") double relative,
        @Unit("m^3") double volume,
        @Unit("K") double temperature,
        @Unit("mol/m^3") double oxygen,
        @Unit("s") double longestStep,
        @Unit("1") double grains) {

    /**
     * For levels that move within seconds: 1 µL. A drain that draws air shifts by seconds, and the water with it by a
     * third of a litre, when levels are 0.1 mm off; a run is no dearer for it, as levelling sections set its steps.
     */
    public static final Accuracy OF_WATER_LEVELS = new Accuracy(1e-9, 1e-9, 1e-2, 1e-2, 5);

    /** For a year of everything: 10 mK, 0.01 mg/L of oxygen, a thousandth of each stock a day's wrong at most. */
    public static final Accuracy OF_A_YEAR = new Accuracy(1e-4, 1e-5, 1e-2, 3e-4, 7200);

    /** For the hours of an outage: 1 mK, 0.3 µg/L of oxygen, which near none comes and goes within minutes. */
    public static final Accuracy OF_AN_OUTAGE = new Accuracy(1e-5, 1e-6, 1e-3, 1e-5, 3600, 0.1);

    /** Salt per water does not matter to any mechanism within a percent; 1 g is far finer. */
    private static final double SALT = 1e-3;

    /** Water of a store without a surface, 0.1 g: the vapour in a room. */
    private static final double VAPOUR = 1e-7;

    /** Water in which a living stock counts its grains, m³. */
    private static final double ONE_TANK = 0.1;

    /** Where the other stocks are followed to a grain each. */
    public Accuracy(
            @Unit("1") double relative,
            @Unit("m^3") double volume,
            @Unit("K") double temperature,
            @Unit("mol/m^3") double oxygen,
            @Unit("s") double longestStep) {
        this(relative, volume, temperature, oxygen, longestStep, 1);
    }

    /** The same so many times closer, every error of it; the longest step stays. */
    public Accuracy closer(@Unit("1") double times) {
        return new Accuracy(
                relative / times, volume / times, temperature / times, oxygen / times, longestStep, grains / times);
    }

    Tolerance tolerance(Network network, State state) {
        double[] absolute = new double[network.size()];
        for (Body body : network.bodies()) {
            for (Stock stock : body.held()) {
                absolute[body.at(stock)] = body.isOutside()
                        ? Double.POSITIVE_INFINITY
                        : least(network, body, stock, state.get(body, Stock.WATER));
            }
        }
        return Tolerance.of(absolute, relative).withMaximumStep(longestStep);
    }

    private double least(Network network, Body body, Stock stock, double filled) {
        double water = Math.max(filled, 1e-3);
        return switch (stock) {
            case WATER -> body.shape() == Shape.none() ? Math.min(volume, grains * VAPOUR) : volume;
            case SALT -> grains * SALT;
            case HEAT -> temperature * (network.density() * network.specificHeat() * water + body.solidHeatCapacity());
            case OXYGEN -> oxygen * water;
            default -> grains * stock.grain() * (filled > 0 ? filled : ONE_TANK);
        };
    }
}
