package org.tidewright.twin.mechanism.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Shape;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.law.carbonate.RoomVentilation;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** One well-mixed room that people fill and outdoor air flushes, against its closed form. */
class RoomAirTest {
    private static final double HOUR = 3600;
    private static final double TEMPERATURE = 20;
    private static final double ATMOSPHERE = 101_325;
    private static final double MOLAR_VOLUME = RoomVentilation.molarVolume(TEMPERATURE, ATMOSPHERE);
    private static final double ROOM = 60;
    private static final double OUTDOORS = 420e-6;

    /** One person gives off 0.018 m³/h of carbon dioxide; rule of thumb of ventilation practice. */
    private static final double BREATH = 0.018 / HOUR / MOLAR_VOLUME;

    /** 50 g of water an hour. */
    private static final double VAPOUR = 50e-6 / HOUR;

    private static final double VAPOUR_OUTDOORS = 800;

    private final TestVessel tank = new TestVessel(0.4, 0.5);
    private final Body fabric = tank.builder().body("room", Shape.none(), 0, 4e6);
    private final Body air = tank.builder().pool("air", Stock.WATER, Stock.HEAT, Stock.INORGANIC_CARBON);
    private final RoomAir room = new RoomAir(air, fabric, ROOM);
    private final Setting people = tank.builder().setting("people", 1);
    private final Setting changes = tank.builder().setting("air changes", 0.5 / HOUR);

    private Weather weather = Weather.constant(20);

    private Run start() {
        tank.with(new People(tank.world(), air, people, BREATH, VAPOUR))
                .with(new Ventilation(room, tank.world(), changes, weather, VAPOUR_OUTDOORS, OUTDOORS * ATMOSPHERE));
        Network network = tank.builder().build();
        State state = tank.filled(network, 25, 0.2);
        state.set(fabric, Stock.HEAT, 4e6 * TEMPERATURE);
        state.set(air, Stock.INORGANIC_CARBON, room.amountFor(700e-6 * ATMOSPHERE, TEMPERATURE));
        state.set(air, Stock.WATER, room.waterFor(1200, TEMPERATURE));
        return TestVessel.run(network, state);
    }

    @Test
    void carbonDioxideFollowsTheClosedFormAsPeopleComeAndWindowsOpen() {
        Run run = start();
        run.until(2 * HOUR);
        double closed = after(700e-6, 2, 1, 0.5);
        assertThat(room.carbonDioxide(run.now())).isCloseTo(closed, withinPercentage(1e-5));
        run.set(people, 3);
        run.until(5 * HOUR);
        closed = after(closed, 3, 3, 0.5);
        assertThat(room.carbonDioxide(run.now())).isCloseTo(closed, withinPercentage(1e-5));
        run.set(changes, 6 / HOUR);
        run.until(5.5 * HOUR);
        closed = after(closed, 0.5, 3, 6);
        assertThat(room.carbonDioxide(run.now())).isCloseTo(closed, withinPercentage(1e-5));
        run.set(people, 0);
        run.set(changes, 0);
        run.until(24 * HOUR);
        assertThat(room.carbonDioxide(run.now())).as("shut and empty").isCloseTo(closed, withinPercentage(1e-5));
    }

    private static double after(double initial, double hours, double count, double changesPerHour) {
        return RoomVentilation.after(
                initial, hours * HOUR, OUTDOORS, changesPerHour / HOUR * ROOM, count * BREATH, MOLAR_VOLUME, ROOM);
    }

    /** 0.018 m³/h of one person into 30 m³/h of outdoor air: 600 ppm above it, a worked example. */
    @Test
    void onePersonAddsSixHundredPartsPerMillionToHalfAChangeOfSixtyCubicMetres() {
        Run run = start();
        run.until(48 * HOUR);
        assertThat(1e6 * (room.carbonDioxide(run.now()) - OUTDOORS)).isCloseTo(600, within(0.1));
    }

    /**
     * Vapour likewise: 50 g/h into 30 m³/h make 1.667 g/m³, which by the perfect gas is 1.667/18.015 mol/m³ R T =
     * 225.5 Pa above outdoors.
     */
    @Test
    void itsVapourFollowsTheSameForm() {
        Run run = start();
        run.until(2 * HOUR);
        double settled = VAPOUR_OUTDOORS + 225.5 * 0.99705;
        double closed = settled + (1200 - settled) * Math.exp(-0.5 * 2);
        assertThat(room.vapourPressure(run.now())).isCloseTo(closed, within(0.2));
        run.until(48 * HOUR);
        assertThat(room.vapourPressure(run.now())).isCloseTo(settled, within(0.2));
    }

    /** Saturated air of 20 °C holds 17.3 g/m³ (steam tables). */
    @Test
    void theVapourOfSaturatedAirIsThatOfSteamTables() {
        double litres = 1e3 * room.waterFor(MoistAir.vapourPressure(20, 1), 20);
        assertThat(litres * 997.05 / ROOM).isCloseTo(17.3, within(0.1));
    }

    /** Saturated at 0 °C: 611.2 Pa (IAPWS SR1-86), less than the 800 Pa that warmer air brings. */
    @Test
    void frostyAirBringsNoMoreVapourThanItCanHold() {
        weather = Weather.constant(0);
        Run run = start();
        run.set(people, 0);
        run.until(48 * HOUR);
        assertThat(room.vapourPressure(run.now())).isCloseTo(611.2, within(0.2));
    }

    /** Saturated at 5 °C: 872.6 Pa (IAPWS SR1-86); the rest of 1200 Pa lies on the panes and comes back with the warmth. */
    @Test
    void aRoomThatGrowsColdDropsVapourAndTakesItUpAgain() {
        Setting cooling = tank.builder().setting("cooling", 0);
        tank.with((now, out) -> out.heat(fabric, tank.world(), now.value(cooling)));
        Run run = start();
        run.set(people, 0).set(changes, 0).set(cooling, 4e6 * 15 / HOUR).until(HOUR);
        double atFive = room.amountFor(1200, TEMPERATURE) / room.amountFor(1200, 5) * 1200;
        assertThat(atFive).as("what it would have by the gas law alone").isGreaterThan(1100);
        assertThat(room.vapourPressure(run.now())).isCloseTo(872.6, within(0.3));
        run.set(cooling, -4e6 * 15 / HOUR).until(2 * HOUR);
        assertThat(room.vapourPressure(run.now())).isCloseTo(1200, within(1e-6));
    }
}
