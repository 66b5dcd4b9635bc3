package org.tidewright.twin.mechanism.biota;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Drawn;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.mechanism.light.Lamp;
import org.tidewright.twin.mechanism.light.Lamps;
import org.tidewright.twin.mechanism.light.LitDay;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/**
 * A community at 26 °C in a lake whose air and carbon it cannot use up, under a lamp that never goes out or none. Runs are
 * held to 1e-9. What is asked for is 5e-4: what is left of production and breath is a tenth of each, and the table of the
 * day's light is right to a hundred-thousandth.
 */
class LitCommunityTest {
    private static final double DAY = 86_400;
    private static final double BREATH = 1e-6;
    private static final double SATURATION = 150e-6;
    private static final double SHEDDING = 0.1 / DAY;
    private static final double CLOSE = 0.05; // percent

    private final TestVessel lake = new TestVessel(1e5, 1);
    private final Body reserve = lake.builder().pool("reserve", Stock.ORGANIC_CARBON);
    private final Body tissue =
            lake.builder().pool("tissue", Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS);
    private final Setting strength = lake.builder().setting("strength", 1);
    private final Setting extent = lake.builder().setting("extent", 1);

    private Network network = new TestVessel(1, 1).builder().build();
    private LitCommunity.@Nullable Rates rates;

    private State community(double light, double ratio, double shedding, double scarce, boolean grows) {
        Setting starts = lake.builder().setting("starts", 0);
        Setting hours = lake.builder().setting("hours", DAY);
        Lamps lamps =
                new Lamps(List.of(new Lamp("lamp", starts, hours, strength, 0, Drawn.exactly(light), lake.mains())));
        rates = new LitCommunity.Rates(
                lake.exactly("breath", "mol/s", BREATH),
                lake.exactly("ratio", "1", ratio),
                lake.exactly("saturation", "mol/(m^2*s)", SATURATION),
                lake.exactly("shedding", "1/s", shedding),
                scarce);
        lake.with(new LitCommunity(
                "corals",
                new LitCommunity.Places(lake.water(), reserve, lake.world()),
                rates,
                lamps,
                new LitDay(lamps, SATURATION / 8, SATURATION * 8),
                extent,
                grows ? new LitCommunity.Growth(tissue, lake.exactly("grown", "1", 0.15)) : null));
        network = lake.builder().build();
        return lake.filled(network, 26, 0.2)
                .dissolve(lake.water(), Stock.ALKALINITY, 25)
                .dissolve(lake.water(), Stock.INORGANIC_CARBON, 22)
                .dissolve(lake.water(), Stock.NITRATE, 0.1)
                .dissolve(lake.water(), Stock.PHOSPHATE, 0.01);
    }

    /** dB/dt = P - R - s B: B nears (P - R)/s as e^(-st). */
    @Test
    void underConstantLightTheReserveNearsTheSurplusOverTheRateOfShedding() {
        double light = 200e-6;
        State state = community(light, 1.1, SHEDDING, 0, false).set(reserve, Stock.ORGANIC_CARBON, 1.0);
        Run run = TestVessel.run(network, state);
        double rest = 0.1 * BREATH / SHEDDING;
        for (int day : new int[] {1, 5, 20, 60}) {
            run.until(day * DAY);
            double closed = rest + (1.0 - rest) * Math.exp(-SHEDDING * day * DAY);
            assertThat(state.get(reserve, Stock.ORGANIC_CARBON))
                    .as("day %d", day)
                    .isCloseTo(closed, withinPercentage(CLOSE));
        }
    }

    /** r = B/(B + z) + s B, solved for B by hand with r 1.1, s 0.1 /d, z half a day: 2.6085 days of breath. */
    @Test
    void itComesToRestWhereBreathAndMucusTakeWhatIsMade() {
        State state = community(200e-6, 1.1, SHEDDING, DAY / 2, false);
        TestVessel.run(network, state).until(300 * DAY);
        assertThat(state.get(reserve, Stock.ORGANIC_CARBON) / (BREATH * DAY)).isCloseTo(2.6085, within(2e-3));
        assertThat(Objects.requireNonNull(rates).reserveAtRest(network.usualParameters()) / (BREATH * DAY))
                .isCloseTo(2.6085, within(1e-3));
    }

    /** In the dark dB/dt = -R B/(B + z), so that B + z ln B falls by R a second; the logarithm magnifies the last of B. */
    @Test
    void inTheDarkTheBreathFallsWithTheReserve() {
        double start = 2 * BREATH * DAY;
        double scarce = DAY / 4;
        State state = community(0, 1.1, 0, scarce, false).set(reserve, Stock.ORGANIC_CARBON, start);
        Run run = TestVessel.run(network, state);
        for (double day : new double[] {0.5, 1, 2, 3}) {
            run.until(day * DAY);
            double left = state.get(reserve, Stock.ORGANIC_CARBON);
            assertThat(left + BREATH * scarce * Math.log(left / start))
                    .as("day %s", day)
                    .isCloseTo(start - BREATH * day * DAY, within(1e-5 * start));
        }
    }

    /** Jassby and Platt 1976: tanh of light over that at which it bends over. */
    @Test
    void halfTheLightMakesWhatTheHyperbolicTangentSays() {
        State state = community(200e-6, 1.1, 0, 0, false).set(reserve, Stock.ORGANIC_CARBON, 1.0);
        Run run = TestVessel.run(network, state);
        run.set(strength, 0.5);
        run.until(DAY);
        double made = 1.1 * Math.tanh(100.0 / 150) / Math.tanh(200.0 / 150);
        assertThat(state.get(reserve, Stock.ORGANIC_CARBON) - 1.0)
                .isCloseTo((made - 1) * BREATH * DAY, withinPercentage(0.2));
    }

    @Test
    void halfTheCommunityBreathesHalf() {
        State state = community(0, 1.1, 0, 0, false).set(reserve, Stock.ORGANIC_CARBON, 1.0);
        Run run = TestVessel.run(network, state);
        run.set(extent, 0.5);
        run.until(DAY);
        assertThat(1.0 - state.get(reserve, Stock.ORGANIC_CARBON))
                .isCloseTo(0.5 * BREATH * DAY, withinPercentage(CLOSE));
    }

    /**
     * Of the surplus 0.15 becomes tissue, less what nitrogen of 100 and phosphate of 10 µmol/L leave of it at half-saturations
     * of 1 and 0.1. Grown on nitrate: two oxygen for each, and the charge of nitrate and phosphate as alkalinity.
     */
    @Test
    void tissueTakesNitrogenAndPhosphorusOutOfTheSurplus() {
        State state = community(0, 1.1, SHEDDING, 0, true).set(reserve, Stock.ORGANIC_CARBON, 1.0);
        double alkalinity = state.get(lake.water(), Stock.ALKALINITY);
        Run run = TestVessel.run(network, state);
        run.set(extent, 0);
        run.until(10 * DAY);
        double surplus = 1 - Math.exp(-1);
        // Nitrate of 100 µmol/L is scarce by a thousandth, and there is no ammonia.
        double carbon = surplus * 0.15 * (100.0 / 101) * (10 / 10.1) * (100 / 100.1);
        assertThat(state.get(tissue, Stock.ORGANIC_CARBON)).isCloseTo(carbon, withinPercentage(CLOSE));
        assertThat(state.get(tissue, Stock.ORGANIC_NITROGEN)).isCloseTo(carbon / 7, withinPercentage(CLOSE));
        assertThat(state.get(tissue, Stock.ORGANIC_PHOSPHORUS)).isCloseTo(carbon / 140, withinPercentage(CLOSE));
        assertThat(state.get(lake.water(), Stock.ORGANIC_CARBON)).isCloseTo(surplus - carbon, withinPercentage(CLOSE));
        assertThat(state.get(lake.water(), Stock.ALKALINITY) - alkalinity)
                .isCloseTo(carbon / 7 + carbon / 140, within(1e-6));
    }
}
