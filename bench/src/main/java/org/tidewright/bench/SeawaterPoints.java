package org.tidewright.bench;

import org.tidewright.seawater.density.ConservativeTemperature;
import org.tidewright.seawater.salinity.AbsoluteSalinity;

/** Waters of a reef, drawn from a seed: the same, bit by bit, as bench/peers/seawater/points.c and gsw_times.py give to the peers. */
final class SeawaterPoints {
    static final int COUNT = 100_000;

    private static final long SEED = 20240;
    private static final int DRAWS_A_POINT = 7;
    private static final double MICRO = 1e-6;

    final double[] practicalSalinity = new double[COUNT];

    /** In degC, ITS-90. */
    final double[] temperature = new double[COUNT];

    /** These five in mol/kg. */
    final double[] alkalinity = new double[COUNT];

    final double[] dissolvedInorganicCarbon = new double[COUNT];
    final double[] phosphate = new double[COUNT];
    final double[] silicate = new double[COUNT];
    final double[] ammonia = new double[COUNT];

    /** In S/m: roughly what such water conducts, by 2 % at worst. */
    final double[] conductivity = new double[COUNT];

    /** In g/kg, reference composition. */
    final double[] absoluteSalinity = new double[COUNT];

    /** In degC. */
    final double[] conservativeTemperature = new double[COUNT];

    SeawaterPoints() {
        for (int i = 0; i < COUNT; i++) {
            practicalSalinity[i] = 30 + 8 * draw(i, 0);
            temperature[i] = 20 + 10 * draw(i, 1);
            alkalinity[i] = MICRO * (1900 + 700 * draw(i, 2));
            dissolvedInorganicCarbon[i] = alkalinity[i] * (0.82 + 0.13 * draw(i, 3));
            phosphate[i] = MICRO * (2 * draw(i, 4));
            silicate[i] = MICRO * (20 * draw(i, 5));
            ammonia[i] = MICRO * (2 * draw(i, 6));
            absoluteSalinity[i] = AbsoluteSalinity.fromPractical(practicalSalinity[i]);
            conservativeTemperature[i] = ConservativeTemperature.fromInSitu(temperature[i], practicalSalinity[i]);
            conductivity[i] = 5.3 * (practicalSalinity[i] / 35) * (1 + 0.02 * (temperature[i] - 25));
        }
    }

    /** A number from 0 to 1, by SplitMix64 (Steele, Lea and Flood 2014, OOPSLA). */
    private static double draw(int point, int which) {
        long z = SEED + ((long) DRAWS_A_POINT * point + which + 1) * 0x9E3779B97F4A7C15L;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        z ^= z >>> 31;
        return (z >>> 11) * 0x1p-53;
    }
}
