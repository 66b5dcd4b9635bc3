package org.tidewright.husbandry.solution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.model.Salt;
import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.ions.MajorIon;
import org.tidewright.testkit.SeededCases;

class ResidueTest {
    private static final Salt[] ALKALINE = {Salt.SODIUM_BICARBONATE, Salt.SODIUM_CARBONATE, Salt.SODIUM_HYDROXIDE};
    private static final Salt[] MINERAL = {
        Salt.SODIUM_BICARBONATE,
        Salt.SODIUM_CARBONATE,
        Salt.SODIUM_HYDROXIDE,
        Salt.CALCIUM_CHLORIDE,
        Salt.MAGNESIUM_CHLORIDE,
        Salt.MAGNESIUM_SULFATE,
        Salt.POTASSIUM_CHLORIDE,
        Salt.CALCIUM_HYDROXIDE
    };
    private static final double DAY = 86_400;

    /** 0.8 dKH a day in 200 L, as bicarbonate and chloride: 0.8 0.35665 200 = 57.06 meq a day. */
    private static final double PER_DAY = 0.05706;

    private static Residue twoPart(double alkalinity) {
        return Residue.of(Map.of(Salt.SODIUM_BICARBONATE, alkalinity, Salt.CALCIUM_CHLORIDE, alkalinity / 2), 0);
    }

    /** 2 NaHCO3 + CaCl2 = CaCO3 + 2 NaCl + CO2 + H2O: 58.44 g a meq; 57.06 meq a day for 30 days leave 100.05 g. */
    @Test
    void thirtyDaysOfTwoPartsLeaveTheTableSaltWorkedByHand() {
        Residue month = twoPart(30 * PER_DAY);
        assertThat(1000 * month.mass()).isCloseTo(100.05, within(0.05));
        assertThat(month.amount(MajorIon.SODIUM)).isCloseTo(30 * PER_DAY, within(1e-12));
        assertThat(month.amount(MajorIon.CHLORIDE)).isCloseTo(30 * PER_DAY, within(1e-12));
        assertThat(month.besidesTableSalt()).isZero();
    }

    @Test
    void aMatchedPairLeavesTableSaltOnly() {
        SeededCases.check(draw -> {
            Solution alkaline = StandardSolutions.alkaline(draw.oneOf(ALKALINE), draw.between(1, 5000));
            double magnesium = draw.between(0, 0.5);
            Solution calcium = StandardSolutions.calciumMatching(alkaline, magnesium);
            Map<Salt, Double> dosed = new EnumMap<>(alkaline.content());
            dosed.putAll(calcium.content());
            Residue residue = Residue.of(dosed, magnesium);
            double alkalinity = alkaline.total(Salt::alkalinity);
            assertThat(residue.amount(MajorIon.SODIUM)).isCloseTo(alkalinity, within(1e-11 * alkalinity));
            assertThat(residue.amount(MajorIon.CHLORIDE)).isCloseTo(alkalinity, within(1e-11 * alkalinity));
            assertThat(residue.besidesTableSalt()).isLessThan(1e-12);
        });
    }

    @Test
    void whatStaysIsNeutralWhateverIsDosed() {
        SeededCases.check(draw -> {
            Map<Salt, Double> dosed = new EnumMap<>(Salt.class);
            for (int i = draw.whole(1, 5); i > 0; i--) {
                dosed.put(draw.oneOf(MINERAL), draw.between(0, 10));
            }
            assertThat(Residue.of(dosed, draw.between(0, 0.5)).charge()).isCloseTo(0, within(1e-12));
        });
    }

    @Test
    void limewaterLeavesNothing() {
        Residue lime = Residue.of(Map.of(Salt.CALCIUM_HYDROXIDE, 3.0), 0);
        for (MajorIon ion : MajorIon.values()) {
            assertThat(lime.amount(ion)).isZero();
        }
    }

    /** A mole of bicarbonate alone takes half a mole of calcium out of the water. */
    @Test
    void alkalinityWithoutCalciumDrawsOnTheWaters() {
        Residue residue = Residue.of(Map.of(Salt.SODIUM_BICARBONATE, 1.0), 0.02);
        assertThat(residue.amount(MajorIon.CALCIUM)).isCloseTo(-0.49, within(1e-12));
        assertThat(residue.amount(MajorIon.MAGNESIUM)).isCloseTo(-0.01, within(1e-12));
        assertThat(residue.amount(MajorIon.SODIUM)).isEqualTo(1);
    }

    /**
     * 20.84 mg/L of salt for each dKH: 0.8 dKH a day leave 0.1167 g/L in a week and, with 10 % changed weekly, 1.167 g/L before
     * each change in the end. 1 dKH a day without changes: 7.61 g/L in a year.
     */
    @Test
    void plateauAndCreepAreThoseWorkedByHand() {
        Residue rate = twoPart(PER_DAY).times(1 / DAY);
        ResidueCourse weekly = new ResidueCourse(rate, 0.2, 35, 25, 0.1, 7 * DAY);
        assertThat(weekly.saltGathered(7 * DAY - 1)).isCloseTo(0.1167, within(0.0001));
        assertThat(weekly.saltPlateau()).isCloseTo(1.167, within(0.001));
        assertThat(weekly.plateau(MajorIon.SODIUM) * 22.990 + weekly.plateau(MajorIon.CHLORIDE) * 35.45)
                .isCloseTo(1167, within(1.0));
        ResidueCourse never = new ResidueCourse(rate.times(1 / 0.8), 0.2, 35, 25, 0, 7 * DAY);
        assertThat(never.saltGathered(ResidueCourse.YEAR)).isCloseTo(7.61, within(0.005));
        assertThat(never.saltPlateau()).isInfinite();
        assertThat(never.creepPlateau()).isInfinite();
        // 7.61 g/L over 1.0233 kg/L are 7.437 g/kg, and 35.16504/35 g/kg go to a unit of salinity: 7.40.
        assertThat(never.creep(ResidueCourse.YEAR)).isCloseTo(7.40, within(0.005));
    }

    /** Day by day, dosed a thousandth of a period at a time and changed when a period is full. */
    @Test
    void theClosedFormIsWhatAStepByStepSumGives() {
        SeededCases.check(50, draw -> {
            double changed = draw.between(0.01, 1);
            double period = draw.between(1, 60) * DAY;
            double volume = draw.between(0.05, 5);
            Residue rate = twoPart(draw.between(1e-3, 10)).times(1 / DAY);
            ResidueCourse course = new ResidueCourse(rate, volume, 35, 25, changed, period);
            double gathered = 0;
            int steps = 1000;
            for (int n = 0; n < 12; n++) {
                for (int i = 0; i < steps; i++) {
                    gathered += rate.amount(MajorIon.SODIUM) / volume * period / steps;
                }
                double before = (n + 1) * period * (1 - 1e-12);
                assertThat(course.gathered(MajorIon.SODIUM, before)).isCloseTo(gathered, within(1e-8 * gathered));
                assertThat(gathered).isLessThanOrEqualTo(course.plateau(MajorIon.SODIUM) * (1 + 1e-9));
                gathered *= 1 - changed;
            }
            double late = 5000 * period * (1 - 1e-13);
            assertThat(course.gathered(MajorIon.SODIUM, late) / course.plateau(MajorIon.SODIUM))
                    .isCloseTo(1, within(1e-6));
        });
    }

    /**
     * Thinned back from 42.4 to 35, each ion the doses do not bring is left with 35/42.4 = 0.825 of the sea's; sodium, 130.2
     * mol/m^3 more over 479.9, with 1.271 0.825 = 1.05.
     */
    @Test
    void broughtBackToItsSalinityTheWaterLacksWhatIsNotDosed() {
        Residue rate = twoPart(PER_DAY / 0.8).times(1 / DAY);
        ResidueCourse never = new ResidueCourse(rate, 0.2, 35, 25, 0, 7 * DAY);
        assertThat(never.shareOfSea(MajorIon.POTASSIUM, ResidueCourse.YEAR)).isCloseTo(0.825, within(0.001));
        assertThat(never.shareOfSea(MajorIon.SULFATE, ResidueCourse.YEAR)).isCloseTo(0.825, within(0.001));
        assertThat(never.shareOfSea(MajorIon.SODIUM, ResidueCourse.YEAR)).isCloseTo(1.05, within(0.003));
        assertThat(never.shareOfSea(MajorIon.SODIUM, 0)).isEqualTo(1);
    }

    /**
     * Per mole of sodium in the sea: Mg 0.05282/0.46897 = 0.1126, of it SO4 0.02824/0.46897 = 0.0602, K 0.01021/0.46897 =
     * 0.0218, Ca 0.01028/0.46897 = 0.0219. 57.06 mmol of NaCl a day over 0.46897 mol/kg 1.0234 kg/L: 118.9 mL.
     */
    @Test
    void theBalancedResidueIsThatWorkedByHand() {
        BalancedResidue one = BalancedResidue.of(1, 35, 25);
        assertThat(one.extra().get(Salt.MAGNESIUM_CHLORIDE)).isCloseTo(0.0524, within(5e-5));
        assertThat(one.extra().get(Salt.MAGNESIUM_SULFATE)).isCloseTo(0.0602, within(5e-5));
        assertThat(one.extra().get(Salt.POTASSIUM_CHLORIDE)).isCloseTo(0.0218, within(5e-5));
        assertThat(one.extra().get(Salt.CALCIUM_CHLORIDE)).isCloseTo(0.0219, within(5e-5));
        assertThat(1e6 * BalancedResidue.of(PER_DAY, 35, 25).exported()).isCloseTo(118.9, within(0.1));
    }

    /** Residue and extra together, in the water taken out, are the water of the tank. */
    @Test
    void theBalancedResidueLeavesWithTheWaterTakenOut() {
        SeededCases.check(draw -> {
            double alkalinity = draw.between(1e-3, 10);
            double salinity = draw.between(25, 40);
            double temperature = draw.between(18, 30);
            BalancedResidue balance = BalancedResidue.of(alkalinity, salinity, temperature);
            Map<Salt, Double> dosed = new EnumMap<>(balance.extra());
            dosed.merge(Salt.SODIUM_BICARBONATE, alkalinity, Double::sum);
            dosed.merge(Salt.CALCIUM_CHLORIDE, alkalinity / 2, Double::sum);
            Residue all = Residue.of(dosed, 0);
            double perKilogram = Density.ofSeawater(temperature, salinity) * balance.exported();
            for (MajorIon ion : new MajorIon[] {
                MajorIon.SODIUM, MajorIon.MAGNESIUM, MajorIon.CALCIUM, MajorIon.POTASSIUM, MajorIon.SULFATE
            }) {
                assertThat(all.amount(ion) / perKilogram / ion.amount(salinity)).isCloseTo(1, within(1e-9));
            }
            assertThat(all.amount(MajorIon.CHLORIDE) / perKilogram / MajorIon.CHLORIDE.amount(salinity))
                    .isCloseTo(1.0056, within(0.0001));
        });
    }

    @Test
    void refusesWhatIsEaten() {
        assertThatThrownBy(() -> Residue.of(Map.of(Salt.SODIUM_NITRATE, 1.0), 0))
                .hasMessageContaining("eaten");
        assertThatThrownBy(() -> Residue.of(Map.of(Salt.CALCIUM_CHLORIDE, 1.0), 2))
                .hasMessageContaining("percent");
        assertThatThrownBy(() -> new ResidueCourse(twoPart(1), 0.2, 35, 25, 10, DAY))
                .hasMessageContaining("percent");
        assertThatThrownBy(() -> new ResidueCourse(twoPart(1), 0, 35, 25, 0.1, DAY))
                .hasMessageContaining("volume");
    }
}
