package org.tidewright.twin.mechanism.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidewright.seawater.carbonate.CarbonateState;
import org.tidewright.seawater.carbonate.CarbonateSystem;
import org.tidewright.seawater.gas.OxygenSolubility;
import org.tidewright.seawater.gas.SchmidtNumber;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.mechanism.air.AirOver;
import org.tidewright.twin.mechanism.water.WaveProgramme;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** A vessel under air: oxygen and carbon dioxide against closed forms and the carbonate system. */
class AerationTest {
    private static final double HOUR = 3600;
    private static final double DAY = 24 * HOUR;
    private static final double AREA = 0.5;
    private static final double DEPTH = 0.4;
    private static final double VOLUME = AREA * DEPTH;

    /** 2 m a day, a rippled surface. */
    private static final double VELOCITY = 2 / DAY;

    /** 8 dKH, 2.8038 to the meq/L. */
    private static final double ALKALINITY = 8 / 2.8038;

    private final TestVessel vessel = new TestVessel(AREA, DEPTH);

    /** Surface under air of a partial pressure; the velocities hold for oxygen at 25 °C. */
    private void surface(double pressure, double still, double stirred, double cover, boolean isStirred) {
        surface(
                pressure,
                still,
                stirred,
                cover,
                new Stirrer(isStirred ? vessel.mains() : TestVessel.noPower(), 3, null));
    }

    private void surface(double pressure, double still, double stirred, double cover, Stirrer... stirrers) {
        AirOver air = AirOver.ledIn(vessel.world(), vessel.builder().setting("carbon dioxide", pressure));
        vessel.with(new SurfaceGases(
                vessel.water(),
                vessel.world(),
                air,
                AREA,
                SchmidtNumber.ofOxygen(25),
                vessel.exactly("still", "m/s", still),
                vessel.exactly("stirred", "m/s", stirred),
                vessel.exactly("cover", "1", cover),
                new Stirring(List.of(stirrers))));
    }

    private double oxygenAfter(double seconds, double temperature) {
        Network network = vessel.builder().build();
        State state = vessel.filled(network, temperature, 0.05)
                .dissolve(vessel.water(), Stock.ALKALINITY, ALKALINITY)
                .dissolve(vessel.water(), Stock.INORGANIC_CARBON, 2.5);
        TestVessel.run(network, state).until(seconds);
        return state.get(vessel.water(), Stock.OXYGEN) / VOLUME;
    }

    // ── oxygen ──

    private WaveProgramme always(double speed, double running) {
        WaveProgramme.Part allDay = new WaveProgramme.Part(0, DAY, speed, running);
        return new WaveProgramme(vessel.builder().setting("speed", 1), List.of(allDay));
    }

    private double aired(double velocity) {
        double rest = OxygenSolubility.perVolume(25, 35);
        return rest + (0.05 - rest) * Math.exp(-velocity / DEPTH * 6 * HOUR);
    }

    /** Lamont and Scott 1970 with the affinity law: k goes with speed^(3/4), and 0.4^0.75 is 0.50297. */
    @Test
    void aPumpAtFourTenthsOfItsSpeedAiresHalfAsFast() {
        surface(420e-6, VELOCITY / 10, VELOCITY, 1, new Stirrer(vessel.mains(), 3, always(0.4, 1)));
        assertThat(oxygenAfter(6 * HOUR, 25)).isCloseTo(aired(0.50297 * VELOCITY), withinPercentage(1e-3));
    }

    /** Half of the time is half of the power; 0.5^(1/4) is 0.84090. */
    @Test
    void pulsesOfHalfTheTimeTakeASixthOffTheExchange() {
        surface(420e-6, VELOCITY / 10, VELOCITY, 1, new Stirrer(vessel.mains(), 3, always(1, 0.5)));
        assertThat(oxygenAfter(6 * HOUR, 25)).isCloseTo(aired(0.84090 * VELOCITY), withinPercentage(1e-3));
    }

    /** 1 W of 16 W is left; the fourth root of 1/16 is 1/2. */
    @Test
    void aSmallPumpLeftRunningAloneHoldsTheFourthRootOfItsShare() {
        surface(
                420e-6,
                VELOCITY / 10,
                VELOCITY,
                1,
                new Stirrer(vessel.mains(), 1, null),
                new Stirrer(TestVessel.noPower(), 15, null));
        assertThat(oxygenAfter(6 * HOUR, 25)).isCloseTo(aired(VELOCITY / 2), withinPercentage(1e-5));
    }

    @Test
    void aPumpThatCreepsLeavesTheSurfaceAsOpenAsStillWater() {
        surface(420e-6, VELOCITY / 10, VELOCITY, 1, new Stirrer(vessel.mains(), 3, always(0.01, 1)));
        assertThat(oxygenAfter(6 * HOUR, 25)).isCloseTo(aired(VELOCITY / 10), withinPercentage(1e-5));
    }

    /** C = C* + (C0 - C*) e^(-k t / h). */
    @Test
    void stirredWaterIsAiredAsTheClosedFormSays() {
        surface(420e-6, VELOCITY / 10, VELOCITY, 1, true);
        double rest = OxygenSolubility.perVolume(25, 35);
        double closed = rest + (0.05 - rest) * Math.exp(-VELOCITY / DEPTH * 6 * HOUR);
        assertThat(oxygenAfter(6 * HOUR, 25)).isCloseTo(closed, withinPercentage(1e-5));
    }

    @Test
    void stillWaterIsAiredAtItsOwnVelocityAndALidSlowsItByItsFactor() {
        surface(420e-6, VELOCITY / 10, VELOCITY, 0.7, false);
        double rest = OxygenSolubility.perVolume(25, 35);
        double closed = rest + (0.05 - rest) * Math.exp(-0.07 * VELOCITY / DEPTH * DAY);
        assertThat(oxygenAfter(DAY, 25)).isCloseTo(closed, withinPercentage(1e-5));
    }

    /**
     * Seawater's Schmidt number of oxygen, Wanninkhof 2014: 568 at 20 °C; its fit gives 445.1 at 25 °C, worked by
     * hand.
     */
    @Test
    void coolerWaterIsAiredMoreSlowlyByTheRootOfItsSchmidtNumber() {
        surface(420e-6, VELOCITY / 10, VELOCITY, 1, true);
        double rest = OxygenSolubility.perVolume(20, 35);
        double velocity = VELOCITY * Math.sqrt(445.1 / 568);
        double closed = rest + (0.05 - rest) * Math.exp(-velocity / DEPTH * 6 * HOUR);
        assertThat(oxygenAfter(6 * HOUR, 20)).isCloseTo(closed, withinPercentage(0.05));
    }

    // ── carbon dioxide ──

    /**
     * pH on the total scale of 8 dKH at 25.5 °C and S 35 by an independent script, which takes µatm for fugacity: its
     * 8.095 at 420 is that of a partial pressure of 421.3.
     */
    @ParameterizedTest
    @CsvSource({"280, 8.23, 0.005", "421.3, 8.095, 0.0005", "600, 7.97, 0.005", "1000, 7.78, 0.005", "1500, 7.62, 0.005"
    })
    void airedWaterEndsAtThePhOfItsAir(double microatmospheres, double ph, double lastDigit) {
        surface(microatmospheres * 1e-6, VELOCITY / 10, VELOCITY, 1, true);
        Network network = vessel.builder().build();
        State state = vessel.filled(network, 25.5, 0.2)
                .dissolve(vessel.water(), Stock.ALKALINITY, ALKALINITY)
                .dissolve(vessel.water(), Stock.INORGANIC_CARBON, 2.6);
        Run run = TestVessel.run(network, state);
        run.until(150 * DAY);
        CarbonateState rest = CarbonateSystem.at(25.5, 35)
                .fromAlkalinityAndPartialPressure(ALKALINITY / TestVessel.DENSITY, microatmospheres * 1e-6);
        assertThat(run.now().solution(vessel.water()).ph())
                .isCloseTo(rest.ph(), within(1e-6))
                .isCloseTo(ph, within(lastDigit));
        assertThat(state.get(vessel.water(), Stock.INORGANIC_CARBON) / VOLUME)
                .isCloseTo(rest.inorganicCarbon() * TestVessel.DENSITY, withinPercentage(1e-4));
        assertThat(state.get(vessel.water(), Stock.ALKALINITY) / VOLUME).isCloseTo(ALKALINITY, within(1e-15));
    }

    /**
     * Because carbon is buffered, water comes to rest with air dDIC/dCO2 times more slowly than it would otherwise:
     * 27 at 350 µatm, 20 at 450, 14 at 600, 9 at 800 (8 dKH, 25.5 °C; worked apart from this code, whole numbers).
     * Carbon dioxide moves at 0.922 of oxygen's velocity, the root of 568 over 668.
     */
    @ParameterizedTest
    @CsvSource({"350, 27", "450, 20", "600, 14", "800, 9"})
    void itComesToRestTwentyTimesAsSlowlyAsOxygen(double microatmospheres, double buffer) {
        double pressure = microatmospheres * 1e-6;
        surface(pressure, VELOCITY / 10, VELOCITY, 1, true);
        CarbonateState rest = CarbonateSystem.at(25.5, 35)
                .fromAlkalinityAndPartialPressure(ALKALINITY / TestVessel.DENSITY, pressure);
        double carbon = rest.inorganicCarbon() * TestVessel.DENSITY;
        Network network = vessel.builder().build();
        State state = vessel.filled(network, 25.5, 0.2)
                .dissolve(vessel.water(), Stock.ALKALINITY, ALKALINITY)
                .dissolve(vessel.water(), Stock.INORGANIC_CARBON, carbon * 1.0001);
        TestVessel.run(network, state).until(2 * DAY);
        double left = state.get(vessel.water(), Stock.INORGANIC_CARBON) / VOLUME - carbon;
        double time = 2 * DAY / Math.log(0.0001 * carbon / left);
        assertThat(time * 0.922 * VELOCITY / DEPTH).isCloseTo(buffer, within(0.5));
    }

    /**
     * 30 mmol of carbon dioxide a day through 0.5 m² at 2 m a day: 0.030/(2 0.5 0.02804 1023.2) atm above the air, 1046
     * µatm; a worked example that takes oxygen's velocity for carbon dioxide's.
     */
    @Test
    void whatATankBreathesStandsAboveTheAirAsWorkedOut() {
        double asWorked = VELOCITY / 0.932;
        surface(420e-6, asWorked / 10, asWorked, 1, true);
        Body water = vessel.water();
        vessel.with((now, out) -> out.move(Stock.INORGANIC_CARBON, vessel.world(), water, 0.030 / DAY));
        Network network = vessel.builder().build();
        State state = vessel.filled(network, 25.5, 0.2)
                .dissolve(water, Stock.ALKALINITY, ALKALINITY)
                .dissolve(water, Stock.INORGANIC_CARBON, 2.6);
        Run run = TestVessel.run(network, state);
        run.until(60 * DAY);
        assertThat(1e6 * run.now().solution(water).partialPressure() - 420).isCloseTo(1046, withinPercentage(1));
    }

    // ── the overflow ──

    /**
     * By hand: r = 1 + 0.38 1.8 0.7 0.20 (1 - 0.11 0.20) (1 + 0.046 25) = 1.20135, so 2000 L/h bring Q (1 - 1/r) =
     * 335.2 L/h of water to rest with the air.
     */
    @Test
    void theOverflowAiresAsWorkedByHand() {
        AirOver air = AirOver.ledIn(vessel.world(), vessel.builder().setting("carbon dioxide", 420e-6));
        vessel.with(new FallGases(
                vessel.water(),
                vessel.world(),
                air,
                2.0 / HOUR,
                0.20,
                vessel.exactly("form", "1", 0.7),
                vessel.mains()));
        double rest = OxygenSolubility.perVolume(25, 35);
        double closed = rest + (0.05 - rest) * Math.exp(-0.3352 / VOLUME * 0.5);
        assertThat(oxygenAfter(HOUR / 2, 25)).isCloseTo(closed, withinPercentage(0.01));
    }

    /** Each by its own distance from rest, as the root of 568 over 668: Wanninkhof 2014, table 1, seawater of 20 °C. */
    @Test
    void atTheOverflowCarbonDioxideGoesAsMuchSlowerThanOxygenAsTheirSchmidtNumbersSay() {
        AirOver air = AirOver.ledIn(vessel.world(), vessel.builder().setting("carbon dioxide", 400e-6));
        vessel.with(new FallGases(
                vessel.water(),
                vessel.world(),
                air,
                2.0 / HOUR,
                0.20,
                vessel.exactly("form", "1", 0.7),
                vessel.mains()));
        CarbonateSystem system = CarbonateSystem.at(20, 35);
        CarbonateState water = system.fromAlkalinityAndPartialPressure(ALKALINITY / TestVessel.DENSITY, 1000e-6);
        CarbonateState rest = system.fromAlkalinityAndPartialPressure(ALKALINITY / TestVessel.DENSITY, 400e-6);
        double carbon = water.inorganicCarbon() * TestVessel.DENSITY * VOLUME;
        Network network = vessel.builder().build();
        State state = vessel.filled(network, 20, 0.1)
                .dissolve(vessel.water(), Stock.ALKALINITY, ALKALINITY)
                .set(vessel.water(), Stock.INORGANIC_CARBON, carbon);
        TestVessel.run(network, state).until(1);
        double ofCarbon = (state.get(vessel.water(), Stock.INORGANIC_CARBON) - carbon)
                / ((rest.carbonDioxide() - water.carbonDioxide()) * TestVessel.DENSITY);
        double ofOxygen =
                (state.get(vessel.water(), Stock.OXYGEN) - 0.1 * VOLUME) / (OxygenSolubility.perVolume(20, 35) - 0.1);
        assertThat(ofCarbon / ofOxygen).isCloseTo(Math.sqrt(568.0 / 668), withinPercentage(0.1));
    }

    @Test
    void noPumpNoFall() {
        AirOver air = AirOver.ledIn(vessel.world(), vessel.builder().setting("carbon dioxide", 420e-6));
        vessel.with(new FallGases(
                vessel.water(),
                vessel.world(),
                air,
                2.0 / HOUR,
                0.20,
                vessel.exactly("form", "1", 0.7),
                TestVessel.noPower()));
        assertThat(oxygenAfter(HOUR, 25)).isCloseTo(0.05, within(1e-15));
    }
}
