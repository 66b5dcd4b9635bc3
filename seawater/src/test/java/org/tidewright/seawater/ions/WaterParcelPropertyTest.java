package org.tidewright.seawater.ions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.tidewright.seawater.carbonate.TotalConcentrations;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;

class WaterParcelPropertyTest {
    private static final List<ToDoubleFunction<WaterParcel>> CARRIED = List.of(
            parcel -> 1,
            WaterParcel::practicalSalinity,
            WaterParcel::alkalinity,
            WaterParcel::inorganicCarbon,
            WaterParcel::magnesium,
            parcel -> parcel.totals().borate(),
            parcel -> parcel.totals().calcium(),
            parcel -> parcel.totals().phosphate(),
            parcel -> parcel.totals().silicate(),
            parcel -> parcel.totals().ammonia());

    @Test
    void mixingLosesNothingAndAddsNothing() {
        SeededCases.check(draw -> {
            List<WaterParcel> parcels = draw.list(1, 6, WaterParcelPropertyTest::water);
            WaterParcel mixed = WaterParcel.mix(parcels);
            for (var carried : CARRIED) {
                double before = parcels.stream()
                        .mapToDouble(parcel -> parcel.mass() * carried.applyAsDouble(parcel))
                        .sum();
                assertThat(mixed.mass() * carried.applyAsDouble(mixed)).isCloseTo(before, within(1e-14 * before));
            }
            double heat = parcels.stream().mapToDouble(WaterParcel::heat).sum();
            // 1e-12 degC of rounding in the temperature found.
            assertThat(mixed.heat()).isCloseTo(heat, within(1e-12 * 4200 * mixed.mass()));
        });
    }

    @Test
    void theOrderOfMixingDoesNotMatter() {
        SeededCases.check(draw -> {
            List<WaterParcel> parcels = draw.list(2, 6, WaterParcelPropertyTest::water);
            WaterParcel atOnce = WaterParcel.mix(parcels);
            List<WaterParcel> turned = new ArrayList<>(parcels);
            Collections.reverse(turned);
            same(turned.stream().reduce(WaterParcel::mixedWith).orElseThrow(), atOnce);
            Collections.rotate(turned, 1);
            same(turned.stream().reduce(WaterParcel::mixedWith).orElseThrow(), atOnce);
        });
    }

    @Test
    void evaporationAndToppingOffBringTheSameWaterBack() {
        SeededCases.check(draw -> {
            WaterParcel tank = water(draw);
            double vapour = tank.mass() * draw.between(0, 0.5);
            same(tank.evaporated(vapour).diluted(vapour, tank.temperature()), tank);
        });
    }

    /** As documented, by at most 0.001 degC: specific heat is not quite linear in salinity. */
    @Test
    void aTwentiethEvaporatedOrAddedHardlyMovesTheTemperatureOfATank() {
        SeededCases.check(draw -> {
            WaterParcel tank = WaterParcel.seawater(100, draw.between(22, 28), draw.between(30, 38), 3e-3, 2.7e-3);
            double mass = draw.between(0, 5);
            assertThat(tank.evaporated(mass).temperature()).isCloseTo(tank.temperature(), within(1e-3));
            assertThat(tank.diluted(mass, tank.temperature()).temperature())
                    .isCloseTo(tank.temperature(), within(1e-3));
        });
    }

    @Test
    void takingAwayAndPouringBackChangesNothing() {
        SeededCases.check(draw -> {
            WaterParcel tank = water(draw);
            double part = tank.mass() * draw.between(0.01, 0.99);
            same(tank.withMass(part).mixedWith(tank.withMass(tank.mass() - part)), tank);
        });
    }

    @Test
    void watersOfOneSalinityMixToATemperatureBetweenTheirs() {
        SeededCases.check(draw -> {
            double s = draw.between(0, 45);
            WaterParcel one = WaterParcel.seawater(draw.between(0.1, 1000), draw.between(0, 40), s, 0, 0);
            WaterParcel other = WaterParcel.seawater(draw.between(0.1, 1000), draw.between(0, 40), s, 0, 0);
            double low = Math.min(one.temperature(), other.temperature());
            double high = Math.max(one.temperature(), other.temperature());
            assertThat(one.mixedWith(other).temperature()).isBetween(low - 1e-12, high + 1e-12);
        });
    }

    private static WaterParcel water(Draw draw) {
        double s = draw.oneOf(0.0, draw.between(0, 45));
        return new WaterParcel(
                draw.between(0.1, 1000),
                draw.between(0, 40),
                s,
                draw.between(0, 6e-3),
                draw.between(0, 6e-3),
                new TotalConcentrations(
                        draw.between(0, 1e-3),
                        draw.between(0, 0.02),
                        draw.between(0, 1e-5),
                        draw.between(0, 1e-4),
                        draw.between(0, 1e-4)),
                draw.between(0, 0.1));
    }

    private static void same(WaterParcel got, WaterParcel expected) {
        for (var carried : CARRIED) {
            double value = carried.applyAsDouble(expected);
            assertThat(carried.applyAsDouble(got)).isCloseTo(value, within(1e-14 * value));
        }
        assertThat(got.mass()).isCloseTo(expected.mass(), within(1e-14 * expected.mass()));
        assertThat(got.temperature()).isCloseTo(expected.temperature(), within(1e-11));
    }
}
