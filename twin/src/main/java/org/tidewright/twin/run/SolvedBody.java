package org.tidewright.twin.run;

import org.tidewright.seawater.carbonate.BoronRatio;
import org.tidewright.seawater.carbonate.CarbonateState;
import org.tidewright.seawater.carbonate.CarbonicAcid;
import org.tidewright.seawater.carbonate.RepeatedCarbonate;
import org.tidewright.seawater.gas.CarbonDioxide;
import org.tidewright.seawater.gas.OxygenSolubility;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Solution;
import org.tidewright.twin.contract.Stock;

/** The chemistry of one body, found when first asked for in a moment and kept until the next. */
final class SolvedBody implements Solution {
    private static final double COLDEST = -1;
    private static final double HOTTEST = 40;
    private static final double SALTIEST = 45;
    private static final double FRESHEST = 1;

    /** A step on trial may overdraw; no water has less. */
    private static final double LEAST = 1e-9;

    private final Moment now;
    private final Body body;
    private final double density;
    private final RepeatedCarbonate solver = new RepeatedCarbonate(BoronRatio.UPPSTROM_1974, CarbonicAcid.LUEKER_2000);
    private double oxygenAtRest;
    private double fugacityFactor;
    private CarbonateState state;
    private long carbonateAt = -1;
    private long oxygenAt = -1;

    SolvedBody(Moment now, Body body, double density) {
        this.now = now;
        this.body = body;
        this.density = density;
        state = solver.solve(25, 35, 0, 0, 0, LEAST, LEAST);
    }

    @Override
    public double ph() {
        return solved().ph();
    }

    @Override
    public double carbonDioxide() {
        return solved().carbonDioxide() * density;
    }

    @Override
    public double carbonDioxideUnder(double partialPressure) {
        solved();
        return partialPressure * fugacityFactor * solver.solubility() * density;
    }

    @Override
    public double partialPressure() {
        return solved().partialPressure();
    }

    @Override
    public double aragoniteSaturation() {
        return solved().aragoniteSaturation();
    }

    @Override
    public double freeAmmoniaShare() {
        return solved().unionisedShare();
    }

    @Override
    public double oxygenAtRest() {
        if (oxygenAt != now.number()) {
            oxygenAt = now.number();
            oxygenAtRest = OxygenSolubility.perVolume(temperature(), now.salinity(body));
        }
        return oxygenAtRest;
    }

    private CarbonateState solved() {
        if (carbonateAt != now.number()) {
            carbonateAt = now.number();
            double temperature = temperature();
            fugacityFactor = CarbonDioxide.fugacityFactor(temperature);
            state = solver.solve(
                    temperature,
                    Math.min(SALTIEST, Math.max(FRESHEST, now.salinity(body))),
                    perMass(Stock.CALCIUM),
                    perMass(Stock.PHOSPHATE),
                    perMass(Stock.AMMONIA),
                    Math.max(LEAST, perMass(Stock.ALKALINITY)),
                    Math.max(LEAST, perMass(Stock.INORGANIC_CARBON)));
        }
        return state;
    }

    private double temperature() {
        return Math.min(HOTTEST, Math.max(COLDEST, now.temperature(body)));
    }

    private double perMass(Stock stock) {
        return now.concentration(body, stock) / density;
    }
}
