package org.tidewright.seawater.carbonate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;

class CarbonateSystemPropertyTest {
    @ParameterizedTest
    @EnumSource(KnownPair.class)
    void everyPairFindsTheStateItWasTakenFrom(KnownPair pair) {
        SeededCases.check(draw -> {
            CarbonateSystem water = water(draw);
            double alkalinity = draw.between(1e-3, 6e-3);
            CarbonateState known = water.fromAlkalinityAndCarbon(alkalinity, alkalinity * draw.between(0.7, 1.3));
            CarbonateState found = water.solve(pair, first(pair, known), second(pair, known));
            // Alkalinity and carbon near each other leave carbonate as their small difference, hence 1e-8.
            assertThat(found.ph()).isCloseTo(known.ph(), within(1e-8));
            assertThat(found.alkalinity() / known.alkalinity()).isCloseTo(1, within(1e-8));
            assertThat(found.inorganicCarbon() / known.inorganicCarbon()).isCloseTo(1, within(1e-8));
        });
    }

    /** Far beyond any tank: acids, lyes, brines, nearly pure water. */
    @Test
    void alkalinityAndCarbonAlwaysHaveASolutionWhoseChargesAddUp() {
        SeededCases.check(20_000, draw -> {
            CarbonateSystem water = water(draw);
            double alkalinity = draw.between(-0.1, 1) * draw.oneOf(1.0, 1e-2, 1e-4, 1e-6);
            double carbon = draw.between(1e-9, 1) * draw.oneOf(1.0, 1e-2, 1e-4, 1e-6);
            CarbonateState state = water.fromAlkalinityAndCarbon(alkalinity, carbon);
            assertThat(charges(state)).isCloseTo(alkalinity, within(1e-13 * scale(state)));
        });
    }

    @Test
    void alkalinityAndCarbonDioxideAlwaysHaveASolutionWhoseChargesAddUp() {
        SeededCases.check(20_000, draw -> {
            CarbonateSystem water = water(draw);
            double alkalinity = draw.between(-0.1, 1) * draw.oneOf(1.0, 1e-2, 1e-4, 1e-6);
            double fugacity = draw.between(1e-9, 1) * draw.oneOf(1.0, 1e-3, 1e-6);
            CarbonateState state = water.solve(KnownPair.ALKALINITY_FUGACITY, alkalinity, fugacity);
            assertThat(charges(state)).isCloseTo(alkalinity, within(1e-13 * scale(state)));
            assertThat(state.fugacity() / fugacity).isCloseTo(1, within(1e-12));
        });
    }

    /** Where a state with both exists at all, it is found; where it is refused, no pH from 0 to 14 has both. */
    @Test
    void alkalinityAndCarbonateAreSolvedOrRightlyRefused() {
        SeededCases.check(5_000, draw -> {
            CarbonateSystem water = water(draw);
            double alkalinity = draw.between(-0.01, 0.1) * draw.oneOf(1.0, 1e-2, 1e-4);
            double carbonate = draw.between(1e-12, 0.05) * draw.oneOf(1.0, 1e-3, 1e-6, 1e-9);
            try {
                CarbonateState state = water.fromAlkalinityAndCarbonate(alkalinity, carbonate);
                assertThat(charges(state)).isCloseTo(alkalinity, within(1e-12 * scale(state)));
                assertThat(state.carbonate() / carbonate).isCloseTo(1, within(1e-12));
            } catch (IllegalArgumentException refused) {
                for (double ph = 0; ph <= 14; ph += 0.01) {
                    assertThat(water.fromPhAndCarbonate(ph, carbonate).alkalinity())
                            .as("alkalinity at pH " + ph)
                            .isGreaterThan(alkalinity);
                }
            }
        });
    }

    @Test
    void ofTheTwoWatersWithThisCarbonateTheLessCausticIsFound() {
        CarbonateSystem water = CarbonateSystem.at(25, 35);
        CarbonateState tank = water.fromAlkalinityAndPh(2.3e-3, 8.1);
        CarbonateState lye = water.fromPhAndCarbonate(11.35, tank.carbonate());
        assertThat(lye.alkalinity()).isGreaterThan(tank.alkalinity());
        assertThat(water.fromAlkalinityAndCarbonate(lye.alkalinity(), tank.carbonate())
                        .ph())
                .isLessThan(8.5);
    }

    @Test
    void moreCarbonMakesItAcidAndMoreAlkalinityLessSo() {
        SeededCases.check(draw -> {
            CarbonateSystem water = water(draw);
            double alkalinity = draw.between(1e-3, 5e-3);
            double carbon = alkalinity * draw.between(0.7, 1.2);
            CarbonateState here = water.fromAlkalinityAndCarbon(alkalinity, carbon);
            CarbonateState fizzier = water.fromAlkalinityAndCarbon(alkalinity, carbon * 1.001);
            assertThat(fizzier.ph()).isLessThan(here.ph());
            assertThat(fizzier.partialPressure()).isGreaterThan(here.partialPressure());
            assertThat(fizzier.carbonate()).isLessThan(here.carbonate());
            CarbonateState dosed = water.fromAlkalinityAndCarbon(alkalinity * 1.001, carbon);
            assertThat(dosed.ph()).isGreaterThan(here.ph());
            assertThat(dosed.partialPressure()).isLessThan(here.partialPressure());
        });
    }

    @Test
    void speciesOfEachAcidAddUpToItsTotal() {
        SeededCases.check(draw -> {
            CarbonateSystem water = water(draw);
            CarbonateState state = water.fromAlkalinityAndPh(draw.between(2e-3, 5e-3), draw.between(7, 8.5));
            assertThat(state.carbonDioxide() + state.bicarbonate() + state.carbonate())
                    .isCloseTo(state.inorganicCarbon(), within(1e-14));
            assertThat(state.borate() + state.boricAcid()).isCloseTo(state.totalBorate(), within(1e-15));
            assertThat(state.phosphoricAcid()
                            + state.dihydrogenPhosphate()
                            + state.hydrogenPhosphate()
                            + state.phosphateIon())
                    .isCloseTo(water.totals().phosphate(), within(1e-15));
            assertThat(state.unionisedAmmonia() + state.ammonium())
                    .isCloseTo(water.totals().ammonia(), within(1e-15));
        });
    }

    /** Seawater shut off from the air: -0.0155 in pH per degree is the textbook slope, from memory; here 0.013 to 0.018. */
    @Test
    void warmingWithoutLossOfGasLowersPhAndRaisesCarbonDioxide() {
        SeededCases.check(draw -> {
            CarbonateSystem water = CarbonateSystem.at(draw.between(18, 28), draw.between(30, 38));
            CarbonateState cool = water.fromAlkalinityAndPh(draw.between(2e-3, 3.5e-3), draw.between(7.8, 8.3));
            CarbonateState warm = water.broughtTo(cool, water.temperature() + 1);
            assertThat(warm.ph() - cool.ph()).isBetween(-0.018, -0.013);
            assertThat(warm.alkalinity()).isEqualTo(cool.alkalinity());
            assertThat(warm.inorganicCarbon()).isEqualTo(cool.inorganicCarbon());
            // Takahashi et al. 1993: 4.23 % per degree.
            assertThat(Math.log(warm.partialPressure() / cool.partialPressure()))
                    .isBetween(0.035, 0.046);
        });
    }

    @Test
    void everyScaleLeadsBackToTheSamePh() {
        SeededCases.check(draw -> {
            double t = draw.between(0, 40);
            double s = draw.between(0, 45);
            double ph = draw.between(6, 9);
            PhScale from = draw.oneOf(PhScale.values());
            PhScale to = draw.oneOf(PhScale.values());
            assertThat(to.convert(from.convert(ph, to, t, s), from, t, s)).isCloseTo(ph, within(1e-12));
        });
    }

    private static CarbonateSystem water(Draw draw) {
        double s = draw.between(0, 45);
        var totals = TotalConcentrations.ofSeawater(s, draw.oneOf(BoronRatio.values()))
                .withNutrients(draw.between(0, 5e-5), draw.between(0, 2e-4), draw.between(0, 1e-4));
        return new CarbonateSystem(draw.between(0, 40), s, totals, draw.oneOf(CarbonicAcid.values()));
    }

    /** The definition of alkalinity (Dickson 1981), term by term from the species. */
    private static double charges(CarbonateState state) {
        return state.bicarbonate()
                + 2 * state.carbonate()
                + state.borate()
                + state.hydroxide()
                + state.hydrogenPhosphate()
                + 2 * state.phosphateIon()
                + state.silicateIon()
                + state.unionisedAmmonia()
                - state.freeHydrogen()
                - state.bisulfate()
                - state.hydrogenFluoride()
                - state.phosphoricAcid();
    }

    /** The size of the terms whose sum is the alkalinity: rounding is relative to it. */
    private static double scale(CarbonateState state) {
        return state.bicarbonate()
                + 2 * state.carbonate()
                + state.borate()
                + state.hydroxide()
                + state.freeHydrogen()
                + state.bisulfate()
                + 1e-4;
    }

    static double first(KnownPair pair, CarbonateState state) {
        return switch (pair) {
            case ALKALINITY_CARBON, ALKALINITY_PH, ALKALINITY_FUGACITY, ALKALINITY_CARBONATE -> state.alkalinity();
            case CARBON_PH, CARBON_FUGACITY, CARBON_CARBONATE -> state.inorganicCarbon();
            case PH_FUGACITY, PH_CARBONATE -> state.ph();
            case FUGACITY_CARBONATE -> state.fugacity();
        };
    }

    static double second(KnownPair pair, CarbonateState state) {
        return switch (pair) {
            case ALKALINITY_CARBON -> state.inorganicCarbon();
            case ALKALINITY_PH, CARBON_PH -> state.ph();
            case ALKALINITY_FUGACITY, CARBON_FUGACITY, PH_FUGACITY -> state.fugacity();
            case ALKALINITY_CARBONATE, CARBON_CARBONATE, PH_CARBONATE, FUGACITY_CARBONATE -> state.carbonate();
        };
    }
}
