package org.tidewright.twin.law.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class HeatBalanceTest {
    /** Newton's law of cooling has a closed form: after one time constant 1/e of the difference is left. */
    @Test
    void aTankUnderProportionalLossCoolsAsTheClosedFormSays() {
        double capacity = TankHeatCapacity.of(0.2, 25, 35, 0, 0);
        double tau = TankHeatCapacity.timeConstant(capacity, 10);
        var cooling = new WorkedTank.Course((seconds, water) -> -10 * (water - 20) / capacity);
        assertThat(cooling.hoursTo(20 + 5.5 / Math.E)).isCloseTo(tau / 3600, within(1e-3));
    }

    @Test
    void aThermostatGivesBackTheHeatItReplaces() {
        var cycle = ThermostatCycle.of(1e6, 0.5, 200, 60);
        // by hand: 5e5 J over 140 W and over 60 W
        assertThat(cycle.on()).isCloseTo(3571.43, within(0.01));
        assertThat(cycle.off()).isCloseTo(8333.33, within(0.01));
        assertThat(cycle.duty()).isCloseTo(0.3, within(1e-12));
    }

    @Test
    void aHeaterTooWeakOrNotNeededDoesNotCycle() {
        assertThatThrownBy(() -> ThermostatCycle.of(1e6, 0.5, 50, 60)).hasMessageContaining("would not cycle");
        assertThatThrownBy(() -> ThermostatCycle.of(1e6, 0.5, 50, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ThermostatCycle.of(1e6, 0.5, 50, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void noHeaterIsNeededWhereOtherHeatSuffices() {
        assertThat(HeaterSizing.power(30, 40, 1.3)).isZero();
    }

    /**
     * Freezing water gives off 333.6 kJ/kg (CRC Handbook 333.55), so ice at 0 degC in water at 0 degC takes up that.
     */
    @Test
    void meltingIceTakesUpItsHeatOfFusion() {
        assertThat(IceBottle.heatTakenUp(1, 0, 0)).isCloseTo(333.55e3, within(100.0));
    }

    /** 100 W in a room that loses 40 W/K holds 2.5 K above the outdoors. */
    @Test
    void theRoomSettlesWhereGainEqualsLoss() {
        assertThat(RoomHeat.rate(2e6, 40, 12.5, 10, 100)).isZero();
        assertThat(RoomHeat.conductance(30, 60, 0.5)).isCloseTo(40.2, within(1e-12));
    }

    @Test
    void theLidIsFiveOverWarmAndThreeOverColdWater() {
        assertThat(LidFilm.coefficient(25, 20)).isEqualTo(5);
        assertThat(LidFilm.coefficient(25, 30)).isEqualTo(3);
        assertThatThrownBy(() -> LidFilm.overWarmWater(25, 35, 25, 0.2, 0.004)).hasMessageContaining("no heat flows");
    }
}
