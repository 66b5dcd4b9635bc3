package org.tidewright.husbandry.mixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.tidewright.husbandry.mixing.WaterChangeTest.text;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.source.Basis;
import org.tidewright.testkit.SeededCases;

class TemperatureAndReserveTest {
    private static final double DAY = 86_400;

    private static TemperatureMatch match(double litres, double limit) {
        WaterChange change =
                new WaterChange(new Portion(0.2, KnownWater.of(35, 25)), litres * 1e-3, KnownWater.of(35, 25));
        return new TemperatureMatch(change, limit);
    }

    /** A tenth of the water: ten times the limit, to the bend of the specific heat. */
    @Test
    void aTenthMayBeTenTimesTheLimitOff() {
        assertThat(match(20, 0.5).coldest()).isCloseTo(20, within(0.02));
        assertThat(match(20, 0.5).warmest()).isCloseTo(30, within(0.02));
        assertThat(match(20, 0.5).after(20)).isCloseTo(24.5, within(0.002));
        assertThat(match(2, 0.5).coldest()).as("a hundredth may be ice-cold").isCloseTo(0, within(1e-9));
    }

    @Test
    void newWaterAtTheEndsMovesTheSystemByTheLimit() {
        SeededCases.check(100, draw -> {
            TemperatureMatch match = match(draw.between(10, 150), draw.between(0.2, 1));
            assertThat(match.after(match.coldest())).isCloseTo(25 - match.limit(), within(1e-6));
            assertThat(match.after(match.warmest())).isCloseTo(25 + match.limit(), within(1e-6));
        });
        assertThat(text(match(20, 0.5).advice().lead())).startsWith("Bring the new water to between 20 °C and 30 °C");
        assertThatThrownBy(() -> new TemperatureMatch(
                        new WaterChange(new Portion(0.2, new KnownWater(Map.of())), 0.02, KnownWater.of(35, 20)), 0.5))
                .hasMessageContaining("temperature of the system is not known");
    }

    private static Warming warming(double power, boolean covered) {
        return new Warming(0.1, 35, 18, 25, power, 18, 0.5, covered);
    }

    /** By hand: 102.4 kg × 3.996 kJ/(kg K) × 7 K = 2.86 MJ; 300 W take 2.65 h of it if nothing is lost. */
    @Test
    void aHeaterTakesTheHeatOverItsPower() {
        assertThat(warming(300, true).shortest() / 3600).isCloseTo(2.65, within(0.02));
    }

    /** A drum of 100 L: 0.503 m wide, walls 0.994 m², top 0.199 m²; 7 K × (7 × 0.994 + 5 × 0.199) = 55.7 W at the end. */
    @Test
    void theVesselLosesWhatItsSurfaceSays() {
        assertThat(warming(300, true).greatestLoss()).isCloseTo(55.7, within(0.2));
        assertThat(warming(300, false).greatestLoss())
                .as("an open one also evaporates")
                .isBetween(70.0, 110.0);
        assertThat(warming(300, true).longest() / warming(300, true).shortest())
                .isCloseTo(300 / (300 - 55.7), within(0.002));
    }

    /** Newton's law: (C/UA) ln[P/(P − UA ΔT)] lies between the two when only walls and lid lose, as they do. */
    @Test
    void theCourseWithLossLiesBetweenTheBounds() {
        Warming warming = warming(300, true);
        double conductance = warming.greatestLoss() / 7;
        double exact = warming.capacity() / conductance * Math.log(300 / (300 - conductance * 7));
        assertThat(exact).isBetween(warming.shortest(), warming.longest());
    }

    @Test
    void aWeakHeaterMayNeverComeThere() {
        assertThat(warming(50, true).longest()).isInfinite();
        assertThat(text(warming(50, true).advice().lead())).startsWith("Cover the batch or take a stronger heater");
        assertThat(text(warming(300, true).advice().lead()))
                .startsWith("Switch the heater on 3.3 h before you want the water");
        assertThat(warming(300, true).advice().cautions().get(0)).contains("residual-current");
    }

    private static Reserve reserve(double reservoirLitres) {
        SaltMix mix = new SaltMix(0.9, 0.03, Basis.FROM_MEMORY, "worked example");
        return new Reserve(0.4, 35, 25, 4e-3 / DAY, reservoirLitres * 1e-3, 14 * DAY, 0.25, mix);
    }

    /** 14 days of 4 L and a quarter of 400 L, worked elsewhere: 156 L, and 3.998 kg of mix for the change. */
    @Test
    void theReserveIsThatOfTheWorkedExample() {
        Reserve reserve = reserve(25);
        assertThat(1000 * reserve.topOff()).isCloseTo(56, within(1e-9));
        assertThat(1000 * (reserve.topOff() + reserve.batch().saltWater())).isCloseTo(156, within(1e-9));
        assertThat(reserve.batch().mixMass()).isCloseTo(3.998, within(0.004));
        // The salt water's pure water is a little less than its volume.
        assertThat(1000 * reserve.pureWater()).isCloseTo(56 + 98.63, within(0.05));
        assertThat(reserve.reservoirLasts() / DAY).isCloseTo(6.25, within(1e-9));
    }

    /** Volume over salinity less one: 400/34 = 11.8 L. */
    @Test
    void aLargeReservoirIsToldToHaveASecondStop() {
        assertThat(1000 * reserve(25).harmlessReservoir()).isCloseTo(11.8, within(0.05));
        assertThat(text(reserve(25).advice().remarks().get(0))).contains("second, independent stop", "11.8 L");
        assertThat(text(reserve(10).advice().remarks().get(0)))
                .doesNotContain("stop")
                .endsWith("lasts 60 h.");
        assertThat(text(reserve(10).advice().lead()))
                .startsWith("Keep 56 L of pure water and 100 L of salt water ready: top-off for 14 days");
        assertThat(reserve(10).advice().working()).hasSize(3);
    }

    @Test
    void whatGoesByTheEvaporationHasItsDoubt() {
        Origin computed = new Origin(Basis.COMPUTED, "open surfaces");
        // 14 days of 4 ± 1.2 L.
        assertThat(text(reserve(10).advice(1.2e-3 / DAY, computed).lead())).startsWith("Keep 56 ± 17 L of pure water");
        assertThat(text(reserve(10).advice(1.2e-3 / DAY, computed).remarks().get(0)))
                .endsWith("lasts 60 ± 18 h.");
    }

    @Test
    void aSealedSystemDrawsOnNoReservoir() {
        Reserve sealed = new Reserve(0.4, 35, 25, 0, 0.01, 14 * DAY, 0.25, SaltMix.USUAL);
        assertThat(text(sealed.advice().remarks().get(0))).contains("is not drawn on while nothing evaporates");
        assertThat(sealed.advice().figures())
                .noneSatisfy(told -> assertThat(told.name()).contains("reservoir"));
        assertThat(text(reserve(0).advice().remarks().get(0))).startsWith("Or keep");
    }

    @Test
    void aBatchThatIsWarmEnoughNeedsNoHeater() {
        Warming warm = new Warming(0.1, 35, 25, 25, 300, 18, 0.5, true);
        assertThat(text(warm.advice().lead())).isEqualTo("Leave the heater off: the batch stands at 25 °C.");
    }
}
