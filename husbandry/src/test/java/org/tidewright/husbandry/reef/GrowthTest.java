package org.tidewright.husbandry.reef;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.source.Basis;
import org.tidewright.plan.species.CoralForm;
import org.tidewright.testkit.SeededCases;

/** Worked examples of growing corals and what they take; the numbers were worked out apart from this program. */
class GrowthTest {
    private static final double SQUARE_CENTIMETRE = 1e-4;
    private static final double DAY = 86_400;

    /** mg/cm^2 a day in mol/(m^2 s), by the molar mass of 100.087 g/mol. */
    private static final double RATE = 1e-2 / 100.087e-3 / DAY;

    /** mol/m^3 in dKH. */
    private static final double DKH = 2.804;

    private static Colony colony(CoralForm form, double squareCentimetres) {
        return new Colony(
                form.name(), 1, Math.sqrt(squareCentimetres * SQUARE_CENTIMETRE / Math.PI), FormTraits.of(form), null);
    }

    private static double degreesPerDay(Demand demand, double volume) {
        return demand.alkalinity() * DAY / volume * DKH;
    }

    /**
     * 250 L: three Acropora of 50 cm², two Euphyllia of 80 cm², 3000 cm² of coralline algae: 600 + 410 + 534 = 1544 mg a day,
     * 30.9 meq, 0.346 dKH a day. The example leaves crowding out, so the floor is made wide; it rounds 408 to 410.
     */
    @Test
    void aSmallMixedReefUsesAsWorkedOut() {
        List<Colony> reef = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            reef.add(colony(CoralForm.BRANCHING_ACROPORA, 50));
        }
        for (int i = 0; i < 2; i++) {
            reef.add(colony(CoralForm.EUPHYLLIA, 80));
        }
        Demand demand = new Growth(reef, 1000, 3000 * SQUARE_CENTIMETRE, Captivity.USUAL).demand(0);
        assertThat(demand.alkalinity() * DAY).isCloseTo(30.9e-3, Percentage.withPercentage(0.5));
        assertThat(degreesPerDay(demand, 0.25)).isCloseTo(0.346, within(0.002));
        // Half as many moles of metal; magnesium 0.5 % of the corals' 1008 mg, 15 % of the coralline algae's 534.
        assertThat(demand.calcium() + demand.magnesium()).isCloseTo(demand.alkalinity() / 2, within(1e-18));
        assertThat(demand.magnesium() * DAY)
                .isCloseTo((0.005 * 1.008 + 0.15 * 0.534) / 100.087, Percentage.withPercentage(0.2));
    }

    /** Twenty Acropora of 2.82 cm, 3 cm a year, a floor of 5000 cm², 200 L, 3.55 mg/cm² a day: 0.46, 1.52 and 2.40 dKH a day. */
    @ParameterizedTest
    @CsvSource({"0, 0.46", "1, 1.52", "2, 2.40"})
    void twentyColoniesCrowdAsWorkedOut(double years, double degrees) {
        CoralTraits acropora = new CoralTraits(
                "acropora",
                false,
                null,
                FlowClass.HIGH,
                0.02,
                Set.of(),
                Ranged.exactly(0.06),
                Ranged.exactly(7.1 * RATE),
                false);
        Growth growth = new Growth(
                List.of(new Colony("staghorns", 20, 0.0282, acropora, null)),
                5000 * SQUARE_CENTIMETRE,
                0,
                Captivity.USUAL);
        assertThat(degreesPerDay(growth.demand(years), 0.2)).isCloseTo(degrees, within(0.005));
    }

    /** Rates in mg/cm² a day as the files of Courtney et al. 2024 have them for the form, low and high over both versions. */
    @ParameterizedTest
    @CsvSource({
        "BRANCHING_ACROPORA, 8.0, 3.73, 9.78",
        "POCILLOPORA, 10.5, 3.49, 12.04",
        "STYLOPHORA, 7.5, 2.12, 9.18",
        "BRANCHING_MONTIPORA, 9.0, 3.15, 11.04",
        "PLATING_MONTIPORA, 2.9, 1.88, 3.47",
        "MASSIVE_PORITES, 8.5, 5.81, 10.08",
        "EUPHYLLIA, 5.1, 2.83, 6.22",
        "LOBOPHYLLIA, 6.0, 2.60, 7.32",
        "FAVITES, 0.73, 0.21, 0.93",
        "SOFT, 0, 0, 0"
    })
    void ratesOfFormsAreThePublishedOnes(CoralForm form, double usual, double low, double high) {
        Ranged rate = FormTraits.of(form).calcification();
        assertThat(rate.value() / RATE).isCloseTo(usual, within(1e-9));
        assertThat(rate.low() / RATE).isCloseTo(low, within(1e-9));
        assertThat(rate.high() / RATE).isCloseTo(high, within(1e-9));
    }

    @Test
    void endsEncloseTheUsualAndSpreadWithTime() {
        Growth growth = Growth.of(TestPlans.example("harbour-room"), CoralLore.BY_FORM, Captivity.USUAL);
        double before = 0;
        for (double years : new double[] {0, 0.25, 0.5, 1, 3, 5}) {
            Ranged alkalinity = growth.alkalinity(years);
            assertThat(alkalinity.value())
                    .isGreaterThan(before)
                    .isEqualTo(growth.demand(years).alkalinity());
            assertThat(alkalinity.low()).isLessThan(alkalinity.value());
            assertThat(alkalinity.high()).isGreaterThan(alkalinity.value());
            before = alkalinity.value();
        }
    }

    @Test
    void coralsNeverTakeLessNorMoreThanAFloorFullOfThem() {
        SeededCases.check(200, draw -> {
            List<Colony> reef = draw.list(
                    1,
                    12,
                    each -> new Colony(
                            "a coral",
                            each.whole(1, 5),
                            each.between(0.005, 0.15),
                            FormTraits.of(each.oneOf(CoralForm.values())),
                            null));
            double floor = draw.between(0.1, 1);
            Growth growth = new Growth(reef, floor, 0, Captivity.USUAL);
            double before = growth.covered(0);
            for (double years = 0.5; years <= 6; years += 0.5) {
                assertThat(growth.covered(years)).isBetween(before - 1e-12, 0.6 * floor);
                before = growth.covered(years);
            }
            assertThat(growth.demand(5).alkalinity()).isLessThanOrEqualTo(2 * 0.5 * 0.6 * floor * 10.5 * RATE);
        });
    }

    /** The file states 1.0 dKH/d ± 0.2 for 495 L; the areas make some 0.7 of it, so growth is 1.4 times the usual half. */
    @Test
    void aUseThatWasSeenSetsTheFactor() {
        Plan plan = TestPlans.example("harbour-room");
        Growth growth = Growth.asStated(plan, CoralLore.BY_FORM, 0.495);
        assertThat(growth.captivity().basis()).isEqualTo(Basis.YOUR_PLAN);
        assertThat(degreesPerDay(growth.demand(0), 0.495)).isCloseTo(1.0, within(0.001));
        Ranged now = growth.alkalinity(0);
        assertThat((now.high() - now.value()) * DAY / 0.495 * DKH).isCloseTo(1.645 * 0.2, within(0.001));
        assertThat(growth.captivity().factor().value()).isBetween(0.6, 0.85);
        assertThat(growth.captivity().isStrange()).isFalse();
    }

    @Test
    void aUseTheAreasCannotExplainIsCalledStrangeAndDoesNotDriveTheSpread() {
        Captivity captivity = Captivity.fitted(10e-6, 1e-6, 1e-6, Basis.YOUR_LOG);
        assertThat(captivity.apparent()).isCloseTo(5, within(1e-9));
        assertThat(captivity.factor().value()).isEqualTo(1);
        assertThat(captivity.isStrange()).isTrue();
        assertThat(Captivity.fitted(-1e-6, 1e-6, 1e-6, Basis.YOUR_LOG).isStrange())
                .isTrue();
    }

    @Test
    void softCoralsTakeNothing() {
        Growth growth = new Growth(List.of(colony(CoralForm.SOFT, 700)), 0.5, 0, Captivity.USUAL);
        assertThat(growth.isAnySkeleton()).isFalse();
        assertThat(growth.alkalinity(3)).isEqualTo(Ranged.exactly(0));
        assertThat(growth.ofCorals(1)).isEqualTo(1);
        assertThat(growth.covered(1)).isGreaterThan(growth.covered(0));
    }

    /**
     * A dose to come, by hand: the harbour room's bicarbonate, 80 g/L of 84.007 g/mol, brings 0.952 mol/L. What its corals take
     * more in half a year over that is added to the 100 mL a day of now.
     */
    @Test
    void theDoseToComeBringsWhatIsTakenMore() {
        Plan plan = TestPlans.example("harbour-room");
        Growth growth = Growth.asStated(plan, CoralLore.BY_FORM, 0.495);
        List<DoseAhead> doses = DoseAhead.of(plan, growth, 0.5);
        assertThat(doses).extracting(dose -> dose.dosing().name()).containsExactly("bicarbonate", "calcium");
        double more = growth.demand(0.5).alkalinity() - growth.demand(0).alkalinity();
        double litres = more * DAY / (80 / 84.007);
        assertThat(doses.get(0).then().value() * DAY * 1000).isCloseTo(0.100 + litres, within(1e-5));
        assertThat(doses.get(0).then().low()).isGreaterThan(doses.get(0).now());
        // Calcium chloride dihydrate, 70 g/L of 147.01 g/mol; half as many moles, but for the corals' 0.5 % of
        // magnesium.
        double calcium = 0.995 * more / 2 * DAY / (70 / 147.01);
        assertThat(doses.get(1).then().value() * DAY * 1000).isCloseTo(0.100 + calcium, within(1e-5));
    }
}
