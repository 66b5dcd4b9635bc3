package org.tidewright.twin.tank;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.Examples;
import org.tidewright.testkit.ChangedText;
import org.tidewright.twin.TestPlans;
import org.tidewright.twin.contract.Shape;

/** Volumes of the worked example's system, and of the example plans by hand from their measures. */
class VesselsTest {
    /** The worked answers were given to four digits. */
    private static final Percentage FOUR_DIGITS = withinPercentage(0.1);

    private static final double LITRES = 1e-3;
    private static final double INCH = 0.0254;
    private static final double POUND = 0.45359237;

    @Test
    void theVolumesOfTheWorkedExampleAreThoseOfItsScript() {
        Vessels vessels = Vessels.of(TestPlans.workedExample());
        Vessels.Vessel display = vessels.display();
        Shape box = requireNonNull(vessels.box()).shape();
        assertThat(display.length() * display.width() * display.rimLevel()).isCloseTo(432 * LITRES, FOUR_DIGITS);
        assertThat(display.shape().surface(0.55)).isCloseTo(0.675, FOUR_DIGITS);
        assertThat(display.shape().volume(0.55)).isCloseTo(346.2 * LITRES, FOUR_DIGITS);
        assertThat(box.volume(0.45)).isCloseTo(18.66 * LITRES, FOUR_DIGITS);
        double sump = vessels.sections().get(0).vessel().shape().volume(0.30)
                + vessels.sections().get(1).vessel().shape().volume(0.25)
                + vessels.lastSection().vessel().shape().volume(0.20);
        assertThat(sump).isCloseTo(104.2 * LITRES, FOUR_DIGITS);
        // 0.45 x 0.248 m²: a centimetre of the last section is 1.116 L
        assertThat(vessels.lastSection().vessel().shape().surface(0.2)).isCloseTo(0.1116, within(1e-12));
    }

    @Test
    void aBoxOnTheBottomTakesItsFootprintFromTheDisplay() {
        // Harbour room: 1.50 x 0.60 - 0.24 x 0.16 m²; 60 kg of rock at 0.42 L/kg, 40 kg of sand at 2.8 kg/L
        Shape display = Vessels.of(TestPlans.example("harbour-room")).display().shape();
        double area = 1.50 * 0.60 - 0.24 * 0.16;
        double solids = 60 * 0.42 * LITRES + 40 / 2800.0;
        assertThat(display.volume(0.485)).isCloseTo(area * 0.485 - solids, within(1e-12));
        assertThat(display.surface(0.485)).isCloseTo(area, within(1e-12));
    }

    @Test
    void gearTakesItsVolumeFromTheSectionItStandsIn() {
        // Harbour room's skimmer section: 0.40 x 0.40 m², a skimmer displaces 2 L
        Vessels vessels = Vessels.of(TestPlans.example("harbour-room"));
        Vessels.Section section = vessels.section("skimmer section");
        assertThat(section.baffleLevel()).isEqualTo(0.23);
        assertThat(section.vessel().shape().volume(0.25)).isCloseTo(0.16 * 0.25 - 2 * LITRES, within(1e-12));
        assertThat(section.vessel().shape().volume(0.42)).isCloseTo(0.16 * 0.42 - 2 * LITRES, within(1e-12));
        assertThat(vessels.section("return section").vessel().shape().volume(0.17))
                .isCloseTo(0.26 * 0.40 * 0.17, within(1e-12));
    }

    @Test
    void aRefugiumHoldsItsMeasuresLessItsSand() {
        Vessels.Vessel refugium =
                requireNonNull(Vessels.of(TestPlans.example("harbour-room")).refugium());
        assertThat(refugium.bottomHeight()).isEqualTo(0.46);
        assertThat(refugium.shape().volume(0.24)).isCloseTo(0.32 * 0.30 * 0.24 - 8 / 2800.0, within(1e-12));
    }

    @Test
    void underAHungBoxThereIsWater() {
        // Front parlor: 47.5 x 12 x 18.5 in up to the crest, less a box of 9 x 3 in that hangs from 12 in upward,
        // 45 lb of rock at 0.42 L/kg, 30 lb of sand at 2.8 kg/L
        Shape display =
                Vessels.of(TestPlans.example("fifty-five-gallon")).display().shape();
        double gross = (47.5 * 12 * 18.5 - 9 * 3 * (18.5 - 12)) * Math.pow(INCH, 3);
        double solids = 45 * POUND * 0.42 * LITRES + 30 * POUND / 2800;
        assertThat(display.volume(18.5 * INCH)).isCloseTo(gross - solids, within(1e-12));
        assertThat(display.surface(18.5 * INCH)).isCloseTo((47.5 * 12 - 9 * 3) * INCH * INCH, within(1e-12));
    }

    @Test
    void aBareDisplayMayHaveAHungOverflowToo() {
        String bare = ChangedText.of(
                Examples.text("fifty-five-gallon"),
                "  rock: {dry_mass: 45 lb}\n",
                "",
                "  sand: {dry_mass: 30 lb}\n",
                "");
        Shape display = Vessels.of(TestPlans.read(bare)).display().shape();
        double gross = (47.5 * 12 * 18.5 - 9 * 3 * (18.5 - 12)) * Math.pow(INCH, 3);
        assertThat(display.volume(18.5 * INCH)).isCloseTo(gross, within(1e-12));
        assertThat(display.level(gross)).isCloseTo(18.5 * INCH, within(1e-12));
    }

    @Test
    void bothPartsOfAHungBoxFillTogetherUntilTheDrainsMouthIsDrowned() {
        // Inside 8.75 x 2.875 in (walls of 1/8 in on three sides), outside 9 x 3.5 in; above 15 + 1.5 - 12 in only
        // inside
        Shape box = requireNonNull(
                        Vessels.of(TestPlans.example("fifty-five-gallon")).box())
                .shape();
        double inside = 8.75 * 2.875 * INCH * INCH;
        double both = inside + 9 * 3.5 * INCH * INCH;
        assertThat(box.volume(3 * INCH)).isCloseTo(both * 3 * INCH, within(1e-12));
        assertThat(box.volume(6 * INCH)).isCloseTo((both * 4.5 + inside * 1.5) * INCH, within(1e-12));
    }

    @Test
    void sectionsPartedOnlyByAnUnderBaffleAreOne() {
        // 0.44 + 0.006 + 0.20 m long together
        Vessels vessels = Vessels.of(TestPlans.workedExample("baffle: {over: 0.30 m}", "baffle: {under: 3 cm}"));
        assertThat(vessels.sections()).hasSize(2);
        Vessels.Section joined = vessels.section("second");
        assertThat(joined).isEqualTo(vessels.section("first"));
        assertThat(joined.vessel().name()).isEqualTo("first + second");
        assertThat(joined.baffleLevel()).isEqualTo(0.25);
        assertThat(joined.vessel().shape().volume(0.25)).isCloseTo(0.646 * 0.45 * 0.25, within(1e-12));
        assertThatThrownBy(() -> vessels.section("third")).hasMessageContaining("no section is called third");
    }
}
