package org.tidewright.twin.law.nutrient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;

class ActivatedCarbonTest {
    private static final double FLOW = 1e-4;

    @Test
    void nothingPassesAtTheFillingOfLangmuir() {
        SeededCases.check(draw -> {
            double concentration = draw.between(1e-3, 1);
            double half = draw.between(0.04, 0.4);
            double filling = ActivatedCarbon.equilibriumFilling(concentration, half);
            assertThat(ActivatedCarbon.uptake(FLOW, 0.3, concentration, filling, half))
                    .isCloseTo(0, within(1e-12 * FLOW * concentration));
            assertThat(ActivatedCarbon.uptake(FLOW, 0.3, concentration, 0.9 * filling, half))
                    .isPositive();
            assertThat(ActivatedCarbon.uptake(FLOW, 0.3, 0.9 * concentration, filling, half))
                    .isNegative();
        });
    }

    /** In constant water dx/dt = F e/(q M) ((C + K)(x_eq - x)): the filling nears its end exponentially. */
    @Test
    void aBedIsSpentAsTheClosedFormSays() {
        double concentration = 0.1;
        double half = 0.2;
        double capacity = 3.3 * 0.05; // mol
        double filling = 0;
        double step = 2;
        int steps = 1500;
        for (int i = 0; i < steps; i++) {
            double first = ActivatedCarbon.uptake(FLOW, 0.3, concentration, filling, half) / capacity;
            double middle = filling + step / 2 * first;
            filling += step * ActivatedCarbon.uptake(FLOW, 0.3, concentration, middle, half) / capacity;
        }
        double pace = FLOW * 0.3 / capacity * (concentration + half);
        double end = concentration / (concentration + half);
        assertThat(filling).isCloseTo(end * -Math.expm1(-pace * step * steps), withinPercentage(1e-4));
    }

    @Test
    void cleanWaterAndFreshCarbonExchangeNothing() {
        assertThat(ActivatedCarbon.uptake(FLOW, 0.3, 0, 0, 0.2)).isZero();
        assertThat(ActivatedCarbon.uptake(FLOW, 0.3, 0.1, 1, 0.2)).isNegative();
    }
}
