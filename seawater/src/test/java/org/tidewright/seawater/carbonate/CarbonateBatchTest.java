package org.tidewright.seawater.carbonate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CarbonateBatchTest {
    @ParameterizedTest
    @EnumSource(KnownPair.class)
    void columnsHoldWhatEachWaterAloneGives(KnownPair pair) {
        int size = 50;
        SplittableRandom random = new SplittableRandom(1);
        double[] t = random.doubles(size, 5, 30).toArray();
        double[] s = random.doubles(size, 20, 40).toArray();
        double[] phosphate = random.doubles(size, 0, 5e-6).toArray();
        double[] silicate = random.doubles(size, 0, 5e-5).toArray();
        double[] ammonia = random.doubles(size, 0, 5e-6).toArray();
        double[] first = new double[size];
        double[] second = new double[size];
        CarbonateState[] alone = new CarbonateState[size];
        for (int i = 0; i < size; i++) {
            var totals = TotalConcentrations.ofSeawater(s[i], BoronRatio.LEE_2010)
                    .withNutrients(phosphate[i], silicate[i], ammonia[i]);
            var water = new CarbonateSystem(t[i], s[i], totals, CarbonicAcid.MILLERO_2010);
            var state = water.fromAlkalinityAndPh(random.nextDouble(2e-3, 4e-3), random.nextDouble(7.7, 8.4));
            first[i] = CarbonateSystemPropertyTest.first(pair, state);
            second[i] = CarbonateSystemPropertyTest.second(pair, state);
            alone[i] = water.solve(pair, first[i], second[i]);
        }
        Map<CarbonateQuantity, double[]> columns = new EnumMap<>(CarbonateQuantity.class);
        for (CarbonateQuantity quantity : CarbonateQuantity.values()) {
            columns.put(quantity, new double[size]);
        }
        new CarbonateBatch(pair, BoronRatio.LEE_2010, CarbonicAcid.MILLERO_2010, columns)
                .withNutrients(phosphate, silicate, ammonia)
                .solve(t, s, first, second);
        columns.forEach((quantity, column) -> {
            for (int i = 0; i < size; i++) {
                assertThat(column[i]).as(quantity + " of water " + i).isEqualTo(alone[i].get(quantity));
            }
        });
    }

    /** The virtual machine's own count of what this thread took; a thousand points more take no more. */
    @Test
    void noMemoryIsTakenForAPoint() {
        int size = 2000;
        Map<CarbonateQuantity, double[]> columns = new EnumMap<>(CarbonateQuantity.class);
        for (CarbonateQuantity quantity : CarbonateQuantity.values()) {
            columns.put(quantity, new double[size]);
        }
        var batch = new CarbonateBatch(
                KnownPair.ALKALINITY_CARBON, BoronRatio.UPPSTROM_1974, CarbonicAcid.LUEKER_2000, columns);
        double[] t = new double[size];
        double[] s = new double[size];
        double[] alkalinity = new double[size];
        double[] carbon = new double[size];
        Arrays.fill(t, 25);
        Arrays.fill(s, 35);
        Arrays.fill(alkalinity, 2.4e-3);
        Arrays.fill(carbon, 2.1e-3);
        batch.solve(t, s, alkalinity, carbon);
        var thread = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().getId();
        long before = thread.getThreadAllocatedBytes(id);
        batch.solve(t, s, alkalinity, carbon);
        assertThat(thread.getThreadAllocatedBytes(id) - before).isLessThan(size);
    }

    @Test
    void aWaterThatIsRefusedIsNamedByItsPlace() {
        double[] out = new double[2];
        var batch = new CarbonateBatch(
                KnownPair.ALKALINITY_PH,
                BoronRatio.UPPSTROM_1974,
                CarbonicAcid.LUEKER_2000,
                Map.of(CarbonateQuantity.INORGANIC_CARBON, out));
        assertThatThrownBy(() -> batch.solve(
                        new double[] {25, 25}, new double[] {35, 35}, new double[] {2.3e-3, 2300}, new double[] {8, 8}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("point 1")
                .hasMessageContaining("umol/kg");
        assertThat(out[0]).isPositive();
    }

    @Test
    void columnsOfDifferentLengthAreRefused() {
        var batch = new CarbonateBatch(
                KnownPair.ALKALINITY_PH,
                BoronRatio.UPPSTROM_1974,
                CarbonicAcid.LUEKER_2000,
                Map.of(CarbonateQuantity.INORGANIC_CARBON, new double[1]));
        assertThatThrownBy(() -> batch.solve(new double[2], new double[1], new double[2], new double[2]))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("length of practical salinity");
        assertThatThrownBy(() -> batch.solve(new double[2], new double[2], new double[2], new double[2]))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("INORGANIC_CARBON has 1 places");
    }
}
