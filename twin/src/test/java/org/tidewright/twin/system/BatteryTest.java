package org.tidewright.twin.system;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.tidewright.twin.TestPlans;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.mechanism.power.Battery;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** The battery of an example: 100 Wh, of which 0.65 are used, feeding an air pump of 3 W through an inverter. */
class BatteryTest {
    private static final double DAY = 86_400;
    private static final double HOUR = 3600;
    private static final double CAPACITY = 100 * HOUR;
    private static final double FULL = 0.65 * CAPACITY;

    private final SystemTwin twin = SystemTwin.of(TestPlans.example("harbour-room"));
    private final Body battery = twin.network().body("battery");
    private final Body mains = twin.network().body("mains");
    private final Setting power = twin.levers().get("power").setting();
    private final double[] parameters = twin.network().usualParameters();
    private final State state = twin.start(parameters);
    private final Run run = new Run(twin.network(), parameters, state, Accuracy.OF_A_YEAR);

    private double energy() {
        return state.get(battery, Stock.HEAT);
    }

    @Test
    void aBatteryIsFullUntilTheMainsFailAndThenGivesPower() {
        run.until(3 * DAY);
        assertThat(energy()).isEqualTo(FULL);
        run.set(power, 0);
        run.until(3 * DAY + HOUR);
        assertThat(energy()).isLessThan(FULL).isPositive();
    }

    /** By hand: 65 Wh over 3 W / 0.88 + 4 W are 8.773 h. */
    @Test
    void itLastsAsLongAsItsEnergyOverWhatPumpAndInverterDraw() {
        run.set(power, 0);
        run.until(10 * HOUR);
        assertThat(run.firstTime(Battery.EMPTY)).isCloseTo(FULL / (3 / 0.88 + 4), withinPercentage(1e-3));
        assertThat(energy()).isCloseTo(0, within(1e-3));
    }

    /**
     * A charger of a fifth of the capacity an hour, 20 W: an empty battery has 0.8 of 65 Wh after 2.6 h; the rest of
     * 13 Wh then comes by e^(-20 W t / 13 Wh).
     */
    @Test
    void onceTheMainsAreBackItIsChargedEvenlyAndSlowerAtTheEnd() {
        state.set(battery, Stock.HEAT, 0);
        // Where the power begins to fall a year's steps may err by a hundredth of the battery.
        Run close = new Run(twin.network(), parameters, state, Accuracy.OF_A_YEAR.closer(100));
        close.until(2 * HOUR);
        assertThat(energy()).isCloseTo(2 * HOUR * 20, withinPercentage(0.01));
        close.until(3.1 * HOUR);
        double missing = 0.2 * FULL * Math.exp(-20.0 / 13 / 2);
        assertThat(FULL - energy()).isCloseTo(missing, within(2e-4 * FULL));
        close.until(DAY);
        assertThat(energy()).isCloseTo(FULL, within(1e-3 * FULL));
    }

    /** What the socket gives for it is a ninth more than the battery keeps: an efficiency of 0.9. */
    @Test
    void chargingTakesMoreFromTheSocketThanItKeeps() {
        State charging = state.copy().set(battery, Stock.HEAT, 0);
        new Run(twin.network(), parameters, charging, Accuracy.OF_A_YEAR).until(HOUR);
        run.until(HOUR);
        double more = state.get(mains, Stock.HEAT) - charging.get(mains, Stock.HEAT);
        assertThat(more).isCloseTo(HOUR * 20 / 0.9, withinPercentage(0.5));
    }

    /** Empty after 8.8 h of an outage, charged for an hour (20 of 65 Wh), it carries the pump for 2.7 h of the next. */
    @Test
    void anEmptyBatteryServesAgainOnceItIsCharged() {
        run.set(power, 0).until(10 * HOUR);
        run.set(power, 1).until(11 * HOUR);
        assertThat(run.log()).anyMatch(event -> event.event().equals(Battery.READY));
        run.set(power, 0).until(16 * HOUR);
        double second = run.log().stream()
                .filter(event -> event.event().equals(Battery.EMPTY))
                .mapToDouble(event -> event.time() - 11 * HOUR)
                .max()
                .orElseThrow();
        assertThat(second).isCloseTo(20 / (3 / 0.88 + 4) * HOUR, withinPercentage(0.1));
    }
}
