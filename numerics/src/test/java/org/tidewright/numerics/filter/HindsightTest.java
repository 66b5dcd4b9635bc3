package org.tidewright.numerics.filter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;

/** What later measurements tell, against filters that were given other measurements. */
class HindsightTest {
    private static final double[] LEVEL = {1, 0, 0};

    /** A level that its use follows a little, the use, and a constant that each reading shares: it cannot move. */
    private static final StructuralModel MODEL = new StructuralModel(
            new double[][] {{-0.05, -1, 0}, {0, 0, 0}, {0, 0, 0}}, List.of(LEVEL, new double[] {0, 1, 0}));

    /** Readings at irregular times. */
    private record Log(double[] gaps, double[] readings, double[] sizes) {
        static Log in(Draw draw) {
            int count = draw.whole(4, 9);
            double[] gaps = new double[count];
            double[] readings = new double[count];
            for (int i = 0; i < count; i++) {
                gaps[i] = draw.between(0.1, 9);
                readings[i] = draw.between(6, 10);
            }
            return new Log(gaps, readings, new double[] {draw.between(0.02, 0.4), draw.between(0.01, 0.2)});
        }

        /** The filter over all of it but one reading; that one counts as missing. */
        LinearFilter without(int missing) {
            return run(missing, -1, 0);
        }

        /** The filter over all of it, the level made uncertain by a variance at one time. */
        LinearFilter loosenedAt(int loosened, double variance) {
            return run(-1, loosened, variance);
        }

        private LinearFilter run(int missing, int loosened, double variance) {
            LinearFilter filter =
                    new LinearFilter(Belief.independent(new double[] {8, 0.2, 0}, new double[] {1, 0.3, 0.2}));
            for (int i = 0; i < gaps.length; i++) {
                Passage passage = passage(gaps[i], sizes);
                if (i == loosened) {
                    passage.noise()[0][0] += variance;
                }
                filter.pass(passage);
                if (i != missing) {
                    filter.learn(reading(i));
                }
            }
            return filter;
        }

        Measurement reading(int i) {
            return new Measurement(readings[i], new double[] {1, 0, 1}, 0.04);
        }
    }

    private static Passage passage(double gap, double[] sizes) {
        Stretch stretch = MODEL.stretch(gap);
        Passage passage = stretch.passage();
        stretch.shake(passage, sizes);
        return passage;
    }

    /** Its place among the moments: the start is the first. */
    private static Hindsight backTo(LinearFilter filter, int reading) {
        List<Moment> moments = filter.moments();
        Hindsight later = new Hindsight(3);
        for (int i = moments.size() - 1; i > reading + 1; i--) {
            later.goBack(moments.get(i).lesson(0));
            later.goBack(moments.get(i).passage());
        }
        return later;
    }

    @Test
    void aReadingIsJudgedAsIfItAloneWereMissing() {
        SeededCases.check(100, draw -> {
            Log log = Log.in(draw);
            int which = draw.whole(0, log.gaps.length - 1);
            LinearFilter all = log.without(-1);
            Lesson lesson = all.moments().get(which + 1).lesson(0);
            Innovation found = backTo(all, which).againstAllOthers(lesson);

            Belief others = Smoother.smooth(log.without(which)).get(which);
            double[] row = {1, 0, 1};
            double spread = Math.pow(others.standardError(row), 2) + 0.04;
            assertThat(found.value()).isCloseTo(log.readings[which] - others.mean(row), within(1e-9));
            assertThat(found.variance()).isCloseTo(spread, within(1e-9));
        });
    }

    @Test
    void aJumpExplainsWhatTheLikelihoodGainsWhereTheLevelIsLetLoose() {
        SeededCases.check(100, draw -> {
            Log log = Log.in(draw);
            int which = draw.whole(1, log.gaps.length - 1);
            LinearFilter all = log.without(-1);
            Hindsight later = backTo(all, which);
            later.goBack(all.moments().get(which + 1).lesson(0));
            Innovation jump = later.jump(LEVEL);

            double vague = 4;
            LinearFilter loose = log.loosenedAt(which, vague);
            double better = loose.logLikelihood() - all.logLikelihood();
            // The likelihood of a jump j is a parabola, 1/v its weight; taken over all jumps with their density
            // beforehand.
            double weight = 1 / jump.variance();
            double expected = -0.5 * Math.log1p(vague * weight)
                    + 0.5 * jump.value() * jump.value() * weight * weight / (weight + 1 / vague);
            assertThat(better).isCloseTo(expected, within(1e-9));
        });
    }

    @Test
    void theLikelihoodRisesAlongASizeOfNoiseAsTheSlopeSays() {
        SeededCases.check(100, draw -> {
            Log log = Log.in(draw);
            for (int source = 0; source < 2; source++) {
                LinearFilter filter = log.without(-1);
                double slope = 0;
                Hindsight later = new Hindsight(3);
                List<Moment> moments = filter.moments();
                for (int i = moments.size() - 1; i > 0; i--) {
                    later.goBack(moments.get(i).lesson(0));
                    slope += MODEL.stretch(log.gaps[i - 1]).slope(source, log.sizes[source], later);
                    later.goBack(moments.get(i).passage());
                }
                double step = 1e-4;
                double difference =
                        (scaled(log, source, Math.exp(step)) - scaled(log, source, Math.exp(-step))) / (2 * step);
                assertThat(slope).as("along " + source).isCloseTo(difference, within(1e-5));
            }
        });
    }

    private static double scaled(Log log, int source, double factor) {
        double[] sizes = log.sizes.clone();
        sizes[source] *= factor;
        return new Log(log.gaps, log.readings, sizes).without(-1).logLikelihood();
    }

    /** Between two readings: a stop there without a reading changes nothing. */
    @Test
    void tellsOfAnyTimeInBetween() {
        SeededCases.check(100, draw -> {
            Log log = Log.in(draw);
            int which = draw.whole(1, log.gaps.length - 1);
            double share = draw.between(0.1, 0.9);
            LinearFilter all = log.without(-1);
            Hindsight later = backTo(all, which);
            later.goBack(all.moments().get(which + 1).lesson(0));
            double rest = (1 - share) * log.gaps[which];
            Passage onward = passage(rest, log.sizes);
            later.goBack(onward);
            LinearFilter upToHere = new LinearFilter(all.moments().get(which).filtered());
            Passage toHere = passage(share * log.gaps[which], log.sizes);
            upToHere.pass(toHere);
            Belief found = later.sharpen(upToHere.belief());

            LinearFilter stopping =
                    new LinearFilter(Belief.independent(new double[] {8, 0.2, 0}, new double[] {1, 0.3, 0.2}));
            for (int i = 0; i < log.gaps.length; i++) {
                double[] parts = i == which ? new double[] {share * log.gaps[i], rest} : new double[] {log.gaps[i]};
                for (double part : parts) {
                    Passage passage = passage(part, log.sizes);
                    stopping.pass(passage);
                }
                stopping.learn(log.reading(i));
            }
            Belief expected = Smoother.smooth(stopping).get(which);
            for (int state = 0; state < 3; state++) {
                assertThat(found.mean(state)).isCloseTo(expected.mean(state), within(1e-9));
                assertThat(found.standardError(state)).isCloseTo(expected.standardError(state), within(1e-9));
            }
        });
    }
}
