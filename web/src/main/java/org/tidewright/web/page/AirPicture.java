package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.sheet.PhAdvice;
import org.tidewright.husbandry.sheet.WaterInAir;
import org.tidewright.web.chart.AirCurves;

/** The curves of the water desk's picture: pH over the alkalinities of tanks, in six airs. */
final class AirPicture {
    /** ppm of carbon dioxide: before industry, outdoors, and rooms from well aired to shut overnight. */
    private static final double[] AIRS = {280, WaterInAir.FRESH, 600, 1000, 1500, 2500};

    private static final double LEAST_DEGREES = 4;
    private static final double MOST_DEGREES = 14;
    private static final double PER_DEGREE = 2;

    private AirPicture() {}

    /** The curves, wide enough for the keeper's own water. */
    static AirCurves curves(WaterInAir air, @Nullable PhAdvice own) {
        double from = LEAST_DEGREES;
        double to = MOST_DEGREES;
        AirCurves.Mark mark = null;
        if (own != null && own.isOrdinary()) {
            from = Math.min(from, Math.floor(own.alkalinity()));
            to = Math.max(to, Math.ceil(own.alkalinity()));
            mark = new AirCurves.Mark(own.alkalinity(), own.ph(), own.freshPh());
        }
        int steps = (int) Math.round((to - from) * PER_DEGREE);
        double[] alkalinity = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            alkalinity[i] = from + i / PER_DEGREE;
        }
        List<AirCurves.Air> airs = new ArrayList<>();
        for (double ppm : AIRS) {
            double[] ph = new double[alkalinity.length];
            for (int i = 0; i < ph.length; i++) {
                ph[i] = air.ph(alkalinity[i], ppm);
            }
            airs.add(new AirCurves.Air(ppm, ppm == WaterInAir.FRESH, ph));
        }
        return new AirCurves(alkalinity, airs, mark);
    }
}
