package org.tidewright.plan.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TestMethodTest {
    private static TestMethod drops() {
        return TestMethods.find(WaterQuantity.ALKALINITY, "drop_titration").orElseThrow();
    }

    static List<TestMethod> methods() {
        return TestMethods.all();
    }

    @Test
    void aDropTitrationThatReadsEightScattersByThreeTenthsOfADegree() {
        // By hand: sqrt(0.20² + (0.02 · 8)² + 0.5²/12) = 0.2940 dKH.
        QuantityUnit degrees = WaterQuantity.ALKALINITY.units().get(0);
        double reading = degrees.toHeld(8);
        assertThat(degrees.errorFromHeld(reading, drops().repeatability(reading)))
                .isCloseTo(0.2940, within(1e-4));
    }

    @Test
    void againstTheTruthTheBiasOfTheBottleIsAdded() {
        QuantityUnit degrees = WaterQuantity.ALKALINITY.units().get(0);
        double reading = degrees.toHeld(8);
        // sqrt(0.2940² + 0.3²)
        assertThat(degrees.errorFromHeld(reading, drops().standardError(reading)))
                .isCloseTo(0.4200, within(1e-4));
    }

    @ParameterizedTest
    @MethodSource("methods")
    void everyMethodScattersAndSaysWhereItsErrorIsFrom(TestMethod method) {
        double middle = (method.quantity().least() + method.quantity().most()) / 2;
        assertThat(method.repeatability(middle)).isPositive();
        assertThat(method.standardError(middle)).isGreaterThanOrEqualTo(method.repeatability(middle));
        assertThat(method.name()).isNotBlank();
        assertThat(method.source()).isNotBlank();
    }

    @Test
    void everyQuantityHasAMethodAndNoTwoMethodsOfItShareAKey() {
        for (WaterQuantity quantity : WaterQuantity.values()) {
            List<TestMethod> methods = TestMethods.of(quantity);
            assertThat(methods).as(quantity.words()).isNotEmpty();
            assertThat(methods.stream().map(TestMethod::key).collect(Collectors.toSet()))
                    .hasSameSizeAs(methods);
        }
    }
}
