package org.tidewright.twin.law.nutrient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;

class MicroalgalBloomTest {
    private static final double DAY = 86_400;

    /**
     * Kremer and Nixon 1978, A coastal marine ecosystem, quoting Eppley 1972: log10 of divisions a day, 0.0275 T -
     * 0.070.
     */
    @Test
    void theCeilingIsThePublishedOne() {
        for (double temperature : new double[] {10, 20, 25, 30}) {
            double divisions = MicroalgalBloom.ceiling(temperature) * DAY / Math.log(2);
            assertThat(divisions).isCloseTo(Math.pow(10, 0.0275 * temperature - 0.070), withinPercentage(3));
        }
    }

    @Test
    void noAlgaIsTakenToGrowFasterThanTheCeiling() {
        assertThat(MicroalgalBloom.GROWTH.high()).isLessThan(MicroalgalBloom.ceiling(25));
        SeededCases.check(draw -> {
            double temperature = draw.between(0, 35);
            double growth = MicroalgalBloom.growth(
                    MicroalgalBloom.GROWTH.high(),
                    draw.between(0, 2e-3),
                    draw.between(0, 1),
                    draw.between(0, 0.1),
                    temperature);
            assertThat(growth).isBetween(0.0, MicroalgalBloom.ceiling(temperature));
        });
    }

    @Test
    void growthNeedsLightNitrogenAndPhosphorus() {
        double growth = MicroalgalBloom.GROWTH.usual();
        assertThat(MicroalgalBloom.growth(growth, 0, 1, 1, 25)).isZero();
        assertThat(MicroalgalBloom.growth(growth, 1e-4, 0, 1, 25)).isZero();
        assertThat(MicroalgalBloom.growth(growth, 1e-4, 1, 0, 25)).isZero();
        assertThat(MicroalgalBloom.growth(growth, 1, 1e6, 1e6, 25)).isCloseTo(growth, withinPercentage(1e-6));
    }

    /** Few algae are cleared in proportion; many outrun their grazers and a greater share of them stays. */
    @Test
    void aThickBloomOutrunsItsGrazers() {
        double thin = MicroalgalBloom.loss(1e-9, 0, 1e-5);
        assertThat(thin).isCloseTo(1e-14, withinPercentage(1e-3));
        SeededCases.check(draw -> {
            double algae = draw.between(1e-6, 0.1);
            double loss = MicroalgalBloom.loss(algae, 1e-7, 1e-5);
            double more = MicroalgalBloom.loss(algae * 1.5, 1e-7, 1e-5);
            assertThat(more).isGreaterThan(loss);
            assertThat(more / (1.5 * algae)).isLessThan(loss / algae);
        });
        assertThat(MicroalgalBloom.loss(0, 1e-7, 1e-5)).isZero();
    }

    /** The mean over the depth, summed in slices. */
    @Test
    void meanLightIsTheMeanOverTheDepth() {
        SeededCases.check(50, draw -> {
            double depth = draw.between(0.1, 1);
            double attenuation = draw.between(0, 2);
            double algae = draw.between(0, 0.5);
            int slices = 2000;
            double sum = 0;
            for (int i = 0; i < slices; i++) {
                sum += 1e-4 * Math.exp(-(attenuation + MicroalgalBloom.SHADING * algae) * depth * (i + 0.5) / slices);
            }
            assertThat(MicroalgalBloom.meanLight(1e-4, depth, attenuation, algae))
                    .isCloseTo(sum / slices, withinPercentage(1e-3));
        });
        assertThat(MicroalgalBloom.meanLight(1e-4, 0, 0, 0)).isEqualTo(1e-4);
        assertThat(MicroalgalBloom.meanLight(1, 1, 0.99e-6, 0))
                .isCloseTo(MicroalgalBloom.meanLight(1, 1, 1.01e-6, 0), within(2e-8));
    }
}
