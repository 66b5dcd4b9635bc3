package org.tidewright.twin.law.nutrient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/** The usual constants against what others measured. */
class NitrificationPublishedTest {
    private static final double DAY = 86_400;

    /**
     * Ebeling, Timmons and Bisogni 2006, Aquaculture 257, 346: 1.83 O2 and 0.976 NO3- per 0.024 of C5H7O2N, all cells
     * counted as built from ammonium. Three digits printed.
     */
    @Test
    void oxygenFallsByWhatTheCellsKeep() {
        Nitrifiers usual = Nitrifiers.AMMONIA_OXIDISERS;
        Nitrifiers both = Nitrifiers.ammoniaOxidisers(
                usual.growth(), usual.decay(), usual.halfSaturation(), usual.oxygenHalfSaturation(), 0.024 / 0.976);
        assertThat(both.oxygenPerOxidised() + 0.5).isCloseTo(1.83 / 0.976, within(0.01));
    }

    /** 4.57 g/g with nothing into cells, 4.18 in Ebeling et al. 2006 per nitrogen taken up; common practice 4.3. */
    @Test
    void bothStepsTogetherUseAsMuchOxygenAsIsReported() {
        Nitrifiers first = Nitrifiers.AMMONIA_OXIDISERS;
        Nitrifiers second = Nitrifiers.NITRITE_OXIDISERS;
        double perNitrate = second.oxygenPerOxidised() + first.oxygenPerOxidised() * second.takenPerOxidised();
        assertThat(perNitrate * 31.9988 / 14.0067).isBetween(4.28, 4.38);
        assertThat((first.oxygenOfOxidation() + second.oxygenOfOxidation()) * 31.9988 / 14.0067)
                .isCloseTo(4.57, within(0.005));
    }

    /** Ebeling et al. 2006: 0.024 of the nitrogen ends in cells. */
    @Test
    void asMuchNitrogenEndsInCellsAsIsReported() {
        double cells = Nitrifiers.AMMONIA_OXIDISERS.yield() + Nitrifiers.NITRITE_OXIDISERS.yield();
        assertThat(cells).isBetween(0.015, 0.025);
    }

    /**
     * Nijhof and Bovendeur 1990, Aquac. Eng. 9, 133: 0.28 g/(m^2 day) at 24 degC in seawater. Li et al. 2017, Acta
     * Oceanol. Sin. 36(12), 87: 0.141 mg/(kg h) of NH4+ on rock, which is 2.6 mg/(kg day) of nitrogen.
     */
    @Test
    void filmAndRockTakeUpWhatWasMeasured() {
        double film = Nitrification.greatestCapacity(0, 0, 0, 0, 1, Nitrification.FILM.usual());
        assertThat(film * DAY * 14.0067).isCloseTo(0.28, withinPercentage(1e-9));
        assertThat(Nitrification.ROCK_MEASURED * DAY * 14006.7).isCloseTo(2.6, within(0.05));
        assertThat(Nitrification.ROCK_MEASURED).isBetween(Nitrification.ROCK.low(), Nitrification.ROCK.usual());
    }

    /**
     * Nijhof and Bovendeur 1990: seawater needs a much longer start-up, in which nitrite builds up. Unseeded tanks at
     * 25 to 27 degC: ammonia gone by day 10 to 21, nitrite peak day 12 to 30 and clear day 25 to 50 (common practice).
     */
    @Test
    void anUnseededTankTakesAsLongAsTanksDo() {
        StartUp tank = new StartUp(26, 2, 0.002, 0.0005, day -> 0);
        assertThat(tank.until(t -> t.ammonia() < 0.1)).isBetween(10.0, 21.0);
        double[] peaks = tank.peaks(10);
        assertThat(peaks[2]).isGreaterThan(1.8);
        assertThat(peaks[3]).isBetween(12.0, 30.0);
        assertThat(tank.until(t -> t.nitrite() < 0.1)).isBetween(25.0, 50.0);
    }
}
