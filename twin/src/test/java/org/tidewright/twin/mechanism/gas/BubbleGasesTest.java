package org.tidewright.twin.mechanism.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.tidewright.seawater.carbonate.CarbonateState;
import org.tidewright.seawater.carbonate.CarbonateSystem;
import org.tidewright.seawater.gas.OxygenSolubility;
import org.tidewright.testkit.SeededCases;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.law.gas.BubbleExchange;
import org.tidewright.twin.mechanism.air.AirOver;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.State;

/** Air holds little carbon dioxide: bubbles can neither bring nor take more of it than fits into them. */
class BubbleGasesTest {
    private static final double TEMPERATURE = 20;
    private static final double ALKALINITY = 2.6;
    private static final double VOLUME = 0.4;

    /** Of air at 20 °C and one atmosphere, a perfect gas: 41.57 mol/m³. */
    private static final double AIR = 101_325 / (8.314462618 * 293.15);

    /** What a stone moves in a minute. */
    private record Moved(double oxygen, double carbon, double airThrough, double difference, double restDifference) {}

    /** Bubbles of air of one partial pressure in water of another, atm. */
    private static Moved minute(double airFlow, double depth, double efficiency, double inAir, double inWater) {
        return minute(airFlow, depth, Double.POSITIVE_INFINITY, efficiency, inAir, inWater);
    }

    private static Moved minute(
            double airFlow, double depth, double waterFlow, double efficiency, double inAir, double inWater) {
        TestVessel vessel = new TestVessel(VOLUME / 0.5, 0.5);
        AirOver air = AirOver.ledIn(vessel.world(), vessel.builder().setting("carbon dioxide", inAir));
        vessel.with(new BubbleGases(
                vessel.water(),
                vessel.world(),
                air,
                airFlow,
                depth,
                waterFlow,
                vessel.exactly("efficiency", "1/m", efficiency),
                vessel.mains()));
        CarbonateSystem system = CarbonateSystem.at(TEMPERATURE, 35);
        CarbonateState water = system.fromAlkalinityAndPartialPressure(ALKALINITY / TestVessel.DENSITY, inWater);
        CarbonateState rest = system.fromAlkalinityAndPartialPressure(ALKALINITY / TestVessel.DENSITY, inAir);
        Network network = vessel.builder().build();
        State state = vessel.filled(network, TEMPERATURE, 0.1)
                .dissolve(vessel.water(), Stock.ALKALINITY, ALKALINITY)
                .dissolve(vessel.water(), Stock.INORGANIC_CARBON, water.inorganicCarbon() * TestVessel.DENSITY);
        TestVessel.run(network, state).until(60);
        return new Moved(
                -state.get(vessel.world(), Stock.OXYGEN),
                -state.get(vessel.world(), Stock.INORGANIC_CARBON),
                airFlow * 60,
                inAir - inWater,
                (rest.carbonDioxide() - water.carbonDioxide()) * TestVessel.DENSITY);
    }

    @Test
    void bubblesNeverCarryMoreThanTheirAirHolds() {
        SeededCases.check(300, draw -> {
            double inAir = draw.between(20e-6, 3000e-6);
            double inWater = draw.between(150e-6, 3000e-6);
            Moved moved =
                    minute(draw.between(1e-6, 5e-4), draw.between(0.05, 1), draw.between(0.01, 0.3), inAir, inWater);
            double most = moved.airThrough() * AIR * Math.abs(moved.difference());
            assertThat(Math.abs(moved.carbon())).isLessThan(most * (1 + 1e-6));
            assertThat(moved.carbon() * moved.difference()).as("towards rest").isGreaterThanOrEqualTo(0);
        });
    }

    /** A deep, fine stone: the air leaves at rest with the water, n = Q t (p_in - p_water) / (R T). */
    @Test
    void airThatRisesLongEnoughLeavesAtRestWithTheWater() {
        Moved moved = minute(1e-5, 3, 0.3, 1000e-6, 400e-6);
        assertThat(moved.carbon()).isCloseTo(moved.airThrough() * AIR * 600e-6, withinPercentage(1));
    }

    /**
     * A shallow, coarse stone hardly changes its air: the two gases are then as the root of their Schmidt numbers,
     * 568 for oxygen and 668 for carbon dioxide in seawater of 20 °C (Wanninkhof 2014, table 1), each by its own
     * distance from rest.
     */
    @Test
    void airThatRisesABreathIsLikeASurface() {
        Moved moved = minute(1e-3, 0.002, 0.01, 1000e-6, 400e-6);
        double oxygenDifference = OxygenSolubility.perVolume(TEMPERATURE, 35) - 0.1;
        double ratio = moved.carbon() / moved.restDifference() / (moved.oxygen() / oxygenDifference);
        assertThat(ratio).isCloseTo(Math.sqrt(568.0 / 668), withinPercentage(0.5));
    }

    /** Water that passes a chamber once: of G = 359 L/h beside F = 900 L/h, 900 (1 - exp(-359/900)) = 296 L/h are left. */
    @Test
    void aChamberExchangesNoMoreThanTheWaterThatPassesIt() {
        double perHour = 1e-3 / 3600;
        assertThat(BubbleExchange.through(359 * perHour, 900 * perHour) / perHour)
                .isCloseTo(296.0, within(0.1));
        assertThat(BubbleExchange.through(1, 900 * perHour)).isCloseTo(900 * perHour, withinPercentage(1e-9));
        Moved open = minute(2e-4, 0.4, 0.06, 1000e-6, 400e-6);
        Moved narrow = minute(2e-4, 0.4, 1e-6, 0.06, 1000e-6, 400e-6);
        double missing = OxygenSolubility.perVolume(TEMPERATURE, 35) - 0.1;
        assertThat(open.oxygen()).isGreaterThan(1.5 * narrow.oxygen());
        assertThat(narrow.oxygen()).isCloseTo(60 * 1e-6 * missing, withinPercentage(0.1));
    }
}
