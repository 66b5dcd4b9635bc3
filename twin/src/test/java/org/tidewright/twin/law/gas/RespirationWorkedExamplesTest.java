package org.tidewright.twin.law.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.Close;
import org.tidewright.testkit.ReferenceTable;

/** A 200 L tank in the dark, its consumers summed one by one; Clarke and Johnston 1999 for the fish. */
class RespirationWorkedExamplesTest {
    private static final double HOUR = 3600;
    private static final double DAY = 86_400;
    private static final double GRAM_PER_MOL = 32; // as the example rounds it
    private static final double SATURATION = 6.66 / GRAM_PER_MOL; // mol/m^3, as the example has it
    private static final double VOLUME = 0.200;
    private static final double DEPTH = 0.40;

    private static ReferenceTable table(String name) {
        return ReferenceTable.read(RespirationWorkedExamplesTest.class, "/reference/gas/" + name);
    }

    private static double milligramsPerHour(double rate) {
        return rate * GRAM_PER_MOL * 1000 * HOUR;
    }

    @Test
    void fishAtRestUseWhatTheTableSays() {
        for (var row : table("fish_resting.csv").rows()) {
            double uptake = FishRespiration.resting(row.number("mass_g") / 1000, 26);
            Close.absolute(row, "resting_mg_o2_h", milligramsPerHour(uptake), row.number("tolerance"));
        }
    }

    /** The parts as printed: fish 16.6, coral 96.0, sand 26.7, rock 15.0, together 154.2 mg/h or 0.771 mg/(L h). */
    @Test
    void theConsumersAddUpAsWorkedOut() {
        assertThat(milligramsPerHour(fish())).isCloseTo(16.6, within(0.05));
        assertThat(milligramsPerHour(coral())).isCloseTo(96.0, within(0.05));
        assertThat(milligramsPerHour(sand())).isCloseTo(26.7, within(0.05));
        assertThat(milligramsPerHour(rock())).isCloseTo(15.0, within(0.05));
        assertThat(milligramsPerHour(total())).isCloseTo(154.2, within(0.1));
        assertThat(milligramsPerHour(total()) / 200).isCloseTo(0.771, within(0.0005));
    }

    private static double fish() {
        return 4 * FishRespiration.active(0.015, 26, 26, 1);
    }

    private static double coral() {
        return ReefRespiration.ofCoral(0.5000, 26);
    }

    private static double sand() {
        return ReefRespiration.ofSand(0.5, 26);
    }

    private static double rock() {
        return ReefRespiration.ofRock(25, 26);
    }

    private static double total() {
        return fish() + coral() + sand() + rock();
    }

    private static OxygenDecline decline(double metresPerDay) {
        return new OxygenDecline(SATURATION, total() / VOLUME, metresPerDay / DAY, DEPTH);
    }

    /** Closed form; the marks in hours as printed. */
    @Test
    void oxygenReachesTheMarksWhenWorkedOut() {
        for (var row : table("outage_200_l.csv").rows()) {
            var decline = decline(row.number("k_m_per_day"));
            for (int mark : new int[] {50, 30, 20}) {
                String column = "hours_to_" + mark + "_percent";
                var time = decline.timeTo(0.95 * SATURATION, mark / 100.0 * SATURATION);
                assertThat(time.isPresent())
                        .as("%s: reached", row.where(column))
                        .isEqualTo(row.has(column));
                if (row.has(column)) {
                    Close.absolute(row, column, time.orElseThrow() / HOUR, 0.05);
                }
            }
        }
    }

    /** As printed: 5 m/d settles at 5.2 mg/L; 3.7 m/d would hold 70 % of saturation. */
    @Test
    void aBatteryAirPumpHoldsWhatIsWorkedOut() {
        assertThat(decline(5).equilibrium() * GRAM_PER_MOL).isCloseTo(5.2, within(0.05));
        assertThat(decline(5).velocityToHold(0.70 * SATURATION) * DAY).isCloseTo(3.7, within(0.05));
    }
}
