package org.tidewright.husbandry.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.plan.source.Basis;

class DisplayLimitsTest {
    private static final double MG_PER_LITRE = 1e-3;

    @Test
    void usualTemperaturesAreThoseOfCommonPractice() {
        Sources sources = new Sources();
        DisplayLimits limits = DisplayLimits.of(TestPlans.workedTank(), sources);
        assertThat(limits.ofTemperature()).extracting(Limit::value).containsExactly(23.0, 20.0, 28.0, 30.0);
        assertThat(limits.ofTemperature()).extracting(Limit::forbiddenBelow).containsExactly(true, true, false, false);
        assertThat(sources.all().get(0).basis()).isEqualTo(Basis.COMMON_PRACTICE);
    }

    /**
     * Half and three tenths of saturation. At 25.5 °C and salinity 35 Garcia and Gordon 1992 (fit of Benson and Krause)
     * give 205.1 µmol/kg; with 1023.2 kg/m³ and 31.9988 g/mol that is 6.71 mg/L.
     */
    @Test
    void usualOxygenIsAShareOfSaturation() {
        DisplayLimits limits = DisplayLimits.of(TestPlans.workedTank(), new Sources());
        assertThat(limits.actOxygen().value()).isCloseTo(0.5 * 6.71 * MG_PER_LITRE, within(0.01 * MG_PER_LITRE));
        assertThat(limits.harmOxygen().value()).isCloseTo(0.3 * 6.71 * MG_PER_LITRE, within(0.01 * MG_PER_LITRE));
    }

    @Test
    void thePlansOwnLimitsTakeTheirPlaceAndAreNamedAsItsSource() {
        Sources sources = new Sources();
        DisplayLimits limits = DisplayLimits.of(
                TestPlans.workedTank("stand: {", "limits: {act_warmer: 27 °C, act_oxygen: 60 %}\nstand: {"), sources);
        assertThat(limits.actWarmer().value()).isCloseTo(27, within(1e-9));
        assertThat(limits.harmWarmer().value()).isEqualTo(30);
        assertThat(limits.actOxygen().value()).isCloseTo(0.6 * 6.71 * MG_PER_LITRE, within(0.01 * MG_PER_LITRE));
        String yours = limits.actWarmer().source();
        assertThat(limits.actOxygen().source()).isEqualTo(yours);
        assertThat(limits.harmWarmer().source()).isNotEqualTo(yours);
        assertThat(sources.all().stream()
                        .filter(source -> source.basis() == Basis.YOUR_PLAN)
                        .map(Source::key))
                .containsExactly(yours);
    }
}
