package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.assertj.core.data.Percentage;

/**
 * A reef system worked through by a script in another language, apart from this code: display 1.20 x 0.60 x 0.60 m
 * inside with an overflow box of 0.300 x 0.150 m (6 mm wall on three sides) against the back pane, crest at 0.550 m,
 * 33 teeth of 6 x 30 mm, a sump of three sections 0.45 m wide and high, a pump of 4.0 m and 6000 L/h, 2500 L/h of
 * seawater at 25.5 degC and S 35. Its answers were given to four digits, so tests allow 0.1 %.
 */
final class ExampleSystem {
    static final Percentage FOUR_DIGITS = withinPercentage(0.1);

    static final double LITRES_PER_HOUR = 1e-3 / 3600;
    static final double LITRES = 1e-3;
    static final double MILLIMETRES = 1e-3;

    static final double DESIGN_FLOW = 2500 * LITRES_PER_HOUR;
    static final double DISPLAY_SURFACE = 1.20 * 0.60 - 0.300 * 0.150;
    static final double DISPLAY_HEIGHT = 0.600;
    static final double CREST = 0.550;
    static final double BOX_SURFACE = (0.300 - 2 * 0.006) * (0.150 - 0.006);
    static final double ROCK_AND_SAND = (40 + 30) / 2.80 * LITRES;
    static final CombWeir TEETH = new CombWeir(33, 0.006, 0.030, CombWeir.USUAL_COEFFICIENT, 0);
    static final double RUNNING_HEAD = TEETH.head(DESIGN_FLOW);

    static final double SUMP_WIDTH = 0.45;
    static final double SECTION_1 = SUMP_WIDTH * 0.44;
    static final double SECTION_2 = SUMP_WIDTH * 0.20;
    static final double SECTION_3 = SUMP_WIDTH * 0.248;
    static final double SUMP_RIM = 0.45;
    static final SumpCascade SUMP = new SumpCascade(List.of(
            new SumpSection(SECTION_1, 0.30, 0.30),
            new SumpSection(SECTION_2, 0.25, 0.25),
            new SumpSection(SECTION_3, 0.20, SUMP_RIM)));

    static final TwoPointPump PUMP = new TwoPointPump(4.0, 6000 * LITRES_PER_HOUR);

    /** Millero and Poisson 1981 at 25.5 degC, S 35: 1023.190 kg/m^3. */
    static final double DENSITY = 1023.1901313;

    /** Sharqawy et al. 2010 at 25.5 degC, S 35: 0.94820749 mPa s. */
    static final double VISCOSITY = 0.94820749e-3 / DENSITY;

    private ExampleSystem() {}

    static PipeRun plastic(double bore, double length, double lossSum) {
        return new PipeRun(bore, length, PipeFriction.CLEAN_PLASTIC, lossSum);
    }
}
