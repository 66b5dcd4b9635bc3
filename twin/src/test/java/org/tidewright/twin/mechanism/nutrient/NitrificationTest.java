package org.tidewright.twin.mechanism.nutrient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.law.nutrient.Nitrifiers;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/**
 * Nitrification as a mechanism in water whose oxygen and pH are held, in mg/L of nitrogen and days as keepers count.
 */
class NitrificationTest {
    private static final double DAY = 86_400;
    private static final double MILLIGRAM = 1 / 14.0067; // mol/m³ in mg/L
    private static final double OXYGEN = 6.4 / 31.9988;

    /** Room for 4 mg/(L day). */
    private static final double MOST = 4 * MILLIGRAM / DAY;

    /** 8.1 on the scale of dilute buffers, on which the worked example counts: free ammonia is 6 % of all at 26 °C. */
    private static final double PH_TOTAL = 8.03;

    private final TestVessel tank;
    private final Body ammoniaOxidisers;
    private final Body nitriteOxidisers;
    private final Body waste;

    NitrificationTest() {
        // A cubic metre.
        tank = new TestVessel(1, 1);
        ammoniaOxidisers = tank.builder().pool("ammonia oxidisers", Stock.ORGANIC_NITROGEN, Stock.ORGANIC_CARBON);
        nitriteOxidisers = tank.builder().pool("nitrite oxidisers", Stock.ORGANIC_NITROGEN, Stock.ORGANIC_CARBON);
        waste = tank.builder().pool("waste", Stock.ORGANIC_NITROGEN, Stock.ORGANIC_CARBON);
    }

    private void step(Nitrification.Step step, double most) {
        Body cells = step == Nitrification.Step.AMMONIA ? ammoniaOxidisers : nitriteOxidisers;
        Parameter one = tank.exactly(step + " growth", "1", 1);
        tank.with(new Nitrification(
                step,
                new Nitrification.Place(tank.water(), cells, waste, tank.world()),
                one,
                tank.exactly(step + " affinity", "1", 1),
                tank.exactly(step + " most", "mol/s", most),
                tank.exactly(step + " warmth", "1", 1.08)));
    }

    /** As strong an aeration as it takes to hold oxygen and pH. */
    private void heldWater() {
        tank.with((now, out) -> {
            out.move(Stock.OXYGEN, tank.world(), tank.water(), 1e-2 * (OXYGEN - now.oxygen(tank.water())));
            double above = now.solution(tank.water()).ph() - PH_TOTAL;
            out.move(Stock.INORGANIC_CARBON, tank.world(), tank.water(), 1e-3 * above);
        });
    }

    private State filled(Network network, double temperature, double ammonia) {
        return tank.filled(network, temperature, OXYGEN)
                .dissolve(tank.water(), Stock.ALKALINITY, 2.85)
                .dissolve(tank.water(), Stock.INORGANIC_CARBON, 2.55)
                .dissolve(tank.water(), Stock.AMMONIA, ammonia * MILLIGRAM);
    }

    private void seed(State state, double ammonia, double nitrite) {
        state.set(ammoniaOxidisers, Stock.ORGANIC_NITROGEN, cells(Nitrification.Step.AMMONIA, ammonia));
        state.set(nitriteOxidisers, Stock.ORGANIC_NITROGEN, cells(Nitrification.Step.NITRITE, nitrite));
    }

    private static double cells(Nitrification.Step step, double perDay) {
        return Nitrification.cellsOf(step, perDay * MILLIGRAM / DAY);
    }

    // ── start-up ──

    /**
     * A new tank of 26 °C with one dose of 2 mg/L, worked through apart from this code by Euler's method with steps
     * of 0.01 day; its numbers were given to 3 %. It leaves out the nitrogen that goes into cells, 2 %.
     */
    @Test
    void aNewTankGoesThroughAmmoniaAndNitriteAsWorkedOut() {
        step(Nitrification.Step.AMMONIA, MOST);
        step(Nitrification.Step.NITRITE, MOST);
        heldWater();
        Network network = tank.builder().build();
        State state = filled(network, 26, 2);
        seed(state, 0.002, 0.0005);
        int perDay = 100;
        double[] times = new double[50 * perDay];
        double[] ammonia = new double[times.length];
        double[] nitrite = new double[times.length];
        for (int i = 0; i < times.length; i++) {
            times[i] = DAY * i / perDay;
        }
        TestVessel.run(network, state).until(50 * DAY, times, (sample, now) -> {
            ammonia[sample] = now.concentration(tank.water(), Stock.AMMONIA) / MILLIGRAM;
            nitrite[sample] = now.concentration(tank.water(), Stock.NITRITE) / MILLIGRAM;
        });
        int peak = 0;
        for (int i = 0; i < times.length; i++) {
            peak = nitrite[i] > nitrite[peak] ? i : peak;
        }
        assertThat(firstBelow(ammonia, 1, 0) / perDay).as("ammonia halved").isCloseTo(12.5, withinPercentage(3));
        assertThat(firstBelow(ammonia, 0.1, 0) / perDay).as("ammonia gone").isCloseTo(14.3, withinPercentage(3));
        assertThat(peak / (double) perDay).as("nitrite's peak").isCloseTo(15.1, withinPercentage(3));
        assertThat(nitrite[peak]).isCloseTo(1.99, withinPercentage(3));
        assertThat(firstBelow(nitrite, 0.1, peak) / perDay).as("nitrite gone").isCloseTo(34.1, withinPercentage(3));
    }

    private static double firstBelow(double[] course, double bound, int from) {
        for (int i = from; i < course.length; i++) {
            if (course[i] < bound) {
                return i;
            }
        }
        throw new AssertionError("it never falls below " + bound);
    }

    // ── what it uses ──

    /**
     * Ebeling, Timmons and Bisogni 2006, Aquaculture 257, 346-358: NH4+ + 1.83 O2 + 1.97 HCO3- turn into
     * 0.0244 cells and 0.976 nitrate. With fewer cells, as here, alkalinity is a little nearer to the 2 of
     * Wolf-Gladrow et al. 2007, and oxygen to 2.
     */
    @Test
    void anAmmoniumCostsTheOxygenAndAlkalinityOfThePrintedReaction() {
        step(Nitrification.Step.AMMONIA, 1);
        step(Nitrification.Step.NITRITE, 1);
        Network network = tank.builder().build();
        State state = filled(network, 26, 1);
        seed(state, 5, 5);
        State before = state.copy();
        TestVessel.run(network, state).until(4 * DAY);
        double used = change(before, state, Stock.AMMONIA);
        assertThat(-used).as("nearly all of it").isGreaterThan(0.99 * MILLIGRAM);
        double nitrate = change(before, state, Stock.NITRATE) / -used;
        double nitrite = change(before, state, Stock.NITRITE) / -used;
        double alkalinity = change(before, state, Stock.ALKALINITY) / used;
        double oxygen = change(before, state, Stock.OXYGEN) / used;
        assertThat(nitrate).isCloseTo(0.976, within(0.006));
        assertThat(alkalinity).isCloseTo(1.97, within(0.015));
        assertThat(oxygen).isCloseTo(1.83, within(0.03));
        assertThat(alkalinity)
                .as("charge: -1 an ammonium, -1 a nitrate or nitrite")
                .isCloseTo(1 + nitrate + nitrite, within(1e-10));
    }

    private double change(State before, State after, Stock stock) {
        return after.get(tank.water(), stock) - before.get(tank.water(), stock);
    }

    // ── growth ──

    /**
     * With plenty of ammonia cells grow as Verhulst's curve, C = C_max / (1 + (C_max/C0 - 1) e^(-g t)), g = mu m - b.
     * In a lake, so that they use nothing up: m = S/(K + S) O/(K_O + O) = 20/20.1 6.4/6.9 at the usual constants.
     */
    @Test
    void cellsGrowAlongVerhulstsCurveToWhatTheSurfacesCarry() {
        TestVessel lake = new TestVessel(1e6, 10);
        Body cells = lake.builder().pool("cells", Stock.ORGANIC_NITROGEN, Stock.ORGANIC_CARBON);
        Body dead = lake.builder().pool("dead", Stock.ORGANIC_NITROGEN, Stock.ORGANIC_CARBON);
        lake.with(new Nitrification(
                Nitrification.Step.AMMONIA,
                new Nitrification.Place(lake.water(), cells, dead, lake.world()),
                lake.exactly("growth", "1", 1),
                lake.exactly("affinity", "1", 1),
                lake.exactly("most", "mol/s", MOST),
                lake.exactly("warmth", "1", 1.08)));
        Network network = lake.builder().build();
        State state = lake.filled(network, 25, OXYGEN).dissolve(lake.water(), Stock.AMMONIA, 20 * MILLIGRAM);
        state.set(cells, Stock.ORGANIC_NITROGEN, cells(Nitrification.Step.AMMONIA, 0.004));
        Run run = TestVessel.run(network, state);
        double g = 0.5 * (20 / 20.1) * (6.4 / 6.9) - 0.03;
        for (int day : new int[] {5, 10, 15, 20, 40}) {
            run.until(day * DAY);
            double capacity = Nitrifiers.AMMONIA_OXIDISERS.capacity(state.get(cells, Stock.ORGANIC_NITROGEN));
            double closed = 4 / (1 + (4 / 0.004 - 1) * Math.exp(-g * day));
            assertThat(capacity / MILLIGRAM * DAY).as("day %d", day).isCloseTo(closed, withinPercentage(0.01));
        }
    }

    /** Without anything to live on they decline at b = 0.03 a day, and all of them is found as waste. */
    @Test
    void starvedCellsDeclineExponentiallyAndBecomeWaste() {
        step(Nitrification.Step.AMMONIA, MOST);
        Network network = tank.builder().build();
        State state = filled(network, 25, 0);
        seed(state, 1, 0);
        double first = state.get(ammoniaOxidisers, Stock.ORGANIC_NITROGEN);
        TestVessel.run(network, state).until(30 * DAY);
        assertThat(state.get(ammoniaOxidisers, Stock.ORGANIC_NITROGEN))
                .isCloseTo(first * Math.exp(-0.9), withinPercentage(1e-3));
        assertThat(state.get(waste, Stock.ORGANIC_NITROGEN))
                .isCloseTo(first * (1 - Math.exp(-0.9)), withinPercentage(1e-3));
    }
}
