package org.tidewright.twin.law.carbonate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.tidewright.twin.law.carbonate.OccupantCarbonDioxide.Person;

/** People and the room they breathe in. */
class RoomCarbonDioxideTest {
    private static final double HOUR = 3600;
    private static final double MOLAR_VOLUME = RoomVentilation.molarVolume(20, 101_325);

    /** The ideal gas at 0 degC and 101325 Pa takes 22.414 L a mole (CODATA). */
    @Test
    void aMoleOfAirTakesItsVolume() {
        assertThat(RoomVentilation.molarVolume(0, 101_325)).isCloseTo(22.414e-3, within(0.5e-6));
    }

    /** Persily and de Jonge 2017 print the constant for 273 K, 101 kPa and RQ 0.85: 0.000484 L/s (from memory). */
    @Test
    void oneMegajouleADayGivesThePrintedFlow() {
        double rate = OccupantCarbonDioxide.rate(1e6 / 86_400, 1);
        assertThat(rate * 22.414).isCloseTo(0.000484, within(0.000001));
    }

    /** Weir 1949, J. Physiol. 109, 1-9: 3.941 + 1.106 RQ kcal for each litre of oxygen at 0 degC and 1 atm. */
    @Test
    void theHeatOfOxygenIsWeirs() {
        double heat = (3.941 + 1.106 * 0.85) * 4184; // J/L
        double expected = 0.85 * 100 / heat / 22.414; // mol/s at 100 W
        assertThat(OccupantCarbonDioxide.rate(100, 1)).isCloseTo(expected, Percentage.withPercentage(1));
    }

    /** Schofield 1985 by hand: a man of 40 with 85 kg 0.048 85 + 3.653 = 7.733 MJ/day, 89.5 W. */
    @Test
    void aManAtRestTurnsOverAsSchofieldSays() {
        assertThat(Person.MAN_30_TO_60.basalMetabolicRate(85)).isCloseTo(89.5, within(0.05));
        assertThat(Person.WOMAN_30_TO_60.basalMetabolicRate(70)).isCloseTo(68.5, within(0.05)); // 5.918 MJ/day
    }

    /**
     * ASTM D6245-12, the older form: an adult at office work, 1.2 met, gives off 0.0052 L/s. The newer form lies 10 to
     * 15 % below it for a man of 85 kg; both serve 0.018 m^3/h, the rule of thumb.
     */
    @Test
    void anAdultGivesOffWhatTheOlderStandardSaysWithinAFifth() {
        double rate =
                OccupantCarbonDioxide.rate(Person.MAN_30_TO_60.basalMetabolicRate(85), OccupantCarbonDioxide.SITTING);
        assertThat(rate * MOLAR_VOLUME * 1000).isCloseTo(0.0052, Percentage.withPercentage(20));
        assertThat(rate * MOLAR_VOLUME * HOUR).isCloseTo(0.018, Percentage.withPercentage(20));
    }

    @Test
    void activityAndMassRaiseWhatIsGivenOff() {
        assertThat(OccupantCarbonDioxide.rate(90, 0)).isZero();
        assertThat(OccupantCarbonDioxide.rate(90, 2) / OccupantCarbonDioxide.rate(90, 1))
                .isCloseTo(2, within(1e-12));
        for (Person person : Person.values()) {
            assertThat(person.basalMetabolicRate(60)).isGreaterThan(person.basalMetabolicRate(50));
        }
    }

    /** 0.018 m^3/h of one person into 30 m^3/h: 600 ppm over the outside. */
    @Test
    void oneClosedWindowAddsSixHundredPartsPerMillion() {
        double source = 0.018 / HOUR / MOLAR_VOLUME;
        double settled = RoomVentilation.settled(420e-6, 30 / HOUR, source, MOLAR_VOLUME);
        assertThat(settled - 420e-6).isCloseTo(600e-6, within(1e-12));
        assertThat(RoomVentilation.rise(settled, 420e-6, 30 / HOUR, source, MOLAR_VOLUME, 30))
                .isCloseTo(0, within(1e-18));
    }

    /** After one air change 1 - 1/e of the way is gone, after many all of it. */
    @Test
    void theRoomApproachesItsSteadyStateAsTheClosedFormSays() {
        double source = 0.018 / HOUR / MOLAR_VOLUME;
        double once = RoomVentilation.after(420e-6, HOUR, 420e-6, 30 / HOUR, source, MOLAR_VOLUME, 30);
        assertThat(once - 420e-6).isCloseTo(600e-6 * (1 - Math.exp(-1)), within(1e-12));
        double late = RoomVentilation.after(420e-6, 100 * HOUR, 420e-6, 30 / HOUR, source, MOLAR_VOLUME, 30);
        assertThat(late).isCloseTo(1020e-6, within(1e-12));
        assertThat(RoomVentilation.after(700e-6, 0, 420e-6, 30 / HOUR, source, MOLAR_VOLUME, 30))
                .isEqualTo(700e-6);
    }

    /** A sealed room of 30 m^3 with one person gains 0.018 / 30 = 600 ppm each hour, without end. */
    @Test
    void aSealedRoomGainsWithoutEnd() {
        double source = 0.018 / HOUR / MOLAR_VOLUME;
        for (double nearlyNothing : new double[] {0, 1e-20, 1e-12}) {
            double after = RoomVentilation.after(420e-6, 3 * HOUR, 420e-6, nearlyNothing, source, MOLAR_VOLUME, 30);
            assertThat(after).isCloseTo(2220e-6, within(1e-9));
        }
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> RoomVentilation.rise(1000, 420e-6, 0.01, 0, 0.024, 30))
                .hasMessageContaining("is it in ppm?");
        assertThatThrownBy(() -> RoomVentilation.settled(420e-6, 0, 1e-4, 0.024))
                .hasMessageContaining("flow of outside air");
        assertThatThrownBy(() -> OccupantCarbonDioxide.rate(90, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
