package org.tidewright.numerics.filter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.Close;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.SeededCases;

class StructuralModelTest {
    private static final StructuralModel LEVEL_AND_USE =
            new StructuralModel(new double[][] {{0, -1}, {0, 0}}, List.of(new double[] {1, 0}, new double[] {0, 1}));

    /** Two levels driven by one use, a fading state beside them. */
    private static final StructuralModel MANY = new StructuralModel(
            new double[][] {{0, 0, -1, 0}, {0, 0, -0.5, 0}, {0, 0, 0, 0}, {0, 0, 0, -1 / 2.5}},
            List.of(new double[] {1, 0.3, 0, 0}, new double[] {0, 0, 1, 0}, new double[] {0, 0, 0, Math.sqrt(2 / 2.5)
            }));

    /** The project's handbook, section 3.2, which is Harvey 1989, Forecasting, Structural Time Series Models, eq. 9.1.20. */
    @Test
    void aLevelAndItsUseHaveTheMatricesOfTheTextbook() {
        double time = 3.5;
        double ofLevel = 0.05;
        double ofUse = 0.03;
        Passage passage = passage(LEVEL_AND_USE, time, new double[] {ofLevel, ofUse}, new double[2]);
        double q = ofUse * ofUse;
        assertThat(LEVEL_AND_USE.stretch(time).matrix()).isDeepEqualTo(new double[][] {{1, -time}, {0, 1}});
        assertThat(passage.noise()[0][0])
                .isCloseTo(ofLevel * ofLevel * time + q * time * time * time / 3, within(1e-15));
        assertThat(passage.noise()[0][1]).isCloseTo(-q * time * time / 2, within(1e-15));
        assertThat(passage.noise()[1][0]).isCloseTo(-q * time * time / 2, within(1e-15));
        assertThat(passage.noise()[1][1]).isCloseTo(q * time, within(1e-15));
    }

    @Test
    void twoPassagesInARowAreTheOneOfBothLengths() {
        SeededCases.check(100, draw -> {
            double first = draw.between(0, 9);
            double second = draw.between(0, 9);
            double[] sizes = {draw.between(0, 1), draw.between(0, 1), draw.between(0, 1)};
            Belief start =
                    Belief.independent(new double[] {8, 4, 0.3, 1}, new double[] {1, 0.5, 0.2, draw.between(0, 2)});
            Belief inTwo = after(start, sizes, first, second);
            Belief inOne = after(start, sizes, first + second);
            for (int i = 0; i < 4; i++) {
                assertThat(inTwo.mean(i)).isCloseTo(inOne.mean(i), within(1e-9));
                for (int j = 0; j < 4; j++) {
                    assertThat(inTwo.covariance()[i][j]).isCloseTo(inOne.covariance()[i][j], within(1e-9));
                }
            }
        });
    }

    private static Belief after(Belief start, double[] sizes, double... times) {
        LinearFilter filter = new LinearFilter(start);
        for (double time : times) {
            filter.pass(passage(MANY, time, sizes, new double[4]));
        }
        return filter.belief();
    }

    /** A use that follows the level it lowers, and takes another level along; a second cause that moves the first. */
    private static StructuralModel reacting(double rate) {
        return new StructuralModel(
                new double[][] {{-rate, 0, -1, -0.7}, {-0.4 * rate, 0, -0.4, 0.3}, {0, 0, 0, 0}, {0, 0, 0, -0.1}},
                List.of(new double[] {1, 0.2, 0, 0}, new double[] {0, 0, 1, 0}, new double[] {0, 0, 0, 1}));
    }

    @Test
    void twoPassagesInARowAreTheOneOfBothLengthsWithAReactionToo() {
        SeededCases.check(200, draw -> {
            StructuralModel model = reacting(draw.between(1e-6, 0.8));
            double[] times = {draw.between(0, 9), draw.between(0, 9)};
            double[] sizes = {draw.between(0, 1), draw.between(0, 1), draw.between(0, 1)};
            double[] rates = {draw.between(-1, 1), draw.between(-1, 1), 0, 0};
            Belief start =
                    Belief.independent(new double[] {8, 4, 0.3, 1}, new double[] {1, 0.5, 0.2, draw.between(0, 2)});
            LinearFilter inTwo = new LinearFilter(start);
            for (double time : times) {
                inTwo.pass(passage(model, time, sizes, rates));
            }
            LinearFilter inOne = new LinearFilter(start);
            inOne.pass(passage(model, times[0] + times[1], sizes, rates));
            for (int i = 0; i < 4; i++) {
                assertThat(inTwo.belief().mean(i)).isCloseTo(inOne.belief().mean(i), within(1e-9));
                for (int j = 0; j < 4; j++) {
                    assertThat(inTwo.belief().covariance()[i][j])
                            .isCloseTo(inOne.belief().covariance()[i][j], within(1e-9));
                }
            }
        });
    }

    private static Passage passage(StructuralModel model, double time, double[] sizes, double[] rates) {
        double[] amounts = rates.clone();
        for (int i = 0; i < amounts.length; i++) {
            amounts[i] *= time;
        }
        Stretch stretch = model.stretch(time);
        Passage passage = stretch.passage();
        System.arraycopy(stretch.evenly(amounts), 0, passage.input(), 0, amounts.length);
        stretch.shake(passage, sizes);
        return passage;
    }

    /** Fed at a rate b and used up at k times itself, a level comes to rest at b/k, by exp(-k t). */
    @Test
    void aLevelThatItsUseFollowsComesToRestWhereFeedAndUseAreEqual() {
        double rate = 0.25;
        StructuralModel model = reacting(rate);
        double[] at = new double[2];
        double[] times = {3, 80};
        for (int i = 0; i < 2; i++) {
            LinearFilter filter = new LinearFilter(Belief.independent(new double[] {8, 0, 0, 0}, new double[4]));
            filter.pass(passage(model, times[i], new double[3], new double[] {1, 0, 0, 0}));
            at[i] = filter.belief().mean(0);
        }
        assertThat(at[0]).isCloseTo(4 + 4 * Math.exp(-rate * 3), within(1e-12));
        assertThat(at[1]).isCloseTo(4, within(1e-7));
    }

    @Test
    void aFadingStateComesToRestAtItsSize() {
        Belief start = Belief.independent(new double[] {0, 0, 0, 5}, new double[] {0, 0, 0, 0});
        Belief later = after(start, new double[] {0, 0, 0.7}, 100);
        assertThat(later.mean(3)).isCloseTo(0, within(1e-15));
        assertThat(later.standardError(3)).isCloseTo(0.7, within(1e-12));
    }

    /**
     * A level without a use, tested each day: with q the ratio of the variances and x = q/2 + √(q²/4 + q) the gain comes to
     * rest at x / (1 + x) (Durbin and Koopman 2012, Time Series Analysis by State Space Methods, section 2.11).
     */
    @Test
    void theGainOfALevelComesToRestWhereTheTextbookSays() {
        double q = 0.09;
        LinearFilter level = new LinearFilter(Belief.independent(new double[] {8, 0}, new double[] {1, 0}));
        Lesson last = daily(level, new double[] {Math.sqrt(q), 0}, 400);
        double x = q / 2 + Math.sqrt(q * q / 4 + q);
        assertThat(last.gain()[0]).isCloseTo(x / (1 + x), within(1e-12));
    }

    /**
     * A level with a use that walks, tested each T with variance r: the covariance repeats itself (Harvey 1989, section
     * 4.1.2) where the gains α of the level and -β/T of the use satisfy, worked by hand from its three equations,
     *
     * <pre>β² / (1 - α) = q T³ / r   and   α² = β (2 - α) - β² / 6</pre>
     */
    @Test
    void theGainsOfALevelAndItsUseComeToRestWhereTheRiccatiEquationsSay() {
        double walk = 0.2;
        LinearFilter trend = new LinearFilter(Belief.independent(new double[] {8, 0}, new double[] {1, 1}));
        Lesson last = daily(trend, new double[] {0, walk}, 2000);
        double alpha = last.gain()[0];
        double beta = -last.gain()[1];
        assertThat(beta).isBetween(0.1, 0.3);
        assertThat(beta * beta / (1 - alpha)).isCloseTo(walk * walk, within(1e-12));
        assertThat(alpha * alpha).isCloseTo(beta * (2 - alpha) - beta * beta / 6, within(1e-12));
    }

    private static Lesson daily(LinearFilter filter, double[] sizes, int days) {
        for (int i = 0; i < days; i++) {
            filter.pass(passage(LEVEL_AND_USE, 1, sizes, new double[2]));
            filter.learn(new Measurement(8, new double[] {1, 0}, 1));
        }
        return filter.moments().get(days).lesson(0);
    }

    @Test
    void followsAnotherCodeOverIrregularGapsForthAndBack() {
        ReferenceTable table = ReferenceTable.read(getClass(), "/reference/filter/irregular_trend.csv");
        LinearFilter filter =
                new LinearFilter(new Belief(new double[] {8.1, 0.4}, new double[][] {{1.44, 0.1}, {0.1, 0.25}}));
        double sum = 0;
        for (ReferenceTable.Row row : table.rows()) {
            double gap = row.number("gap_d");
            filter.pass(
                    passage(LEVEL_AND_USE, gap, new double[] {0.05, 0.03}, new double[] {row.number("came") / gap, 0}));
            Innovation innovation =
                    filter.learn(new Measurement(row.number("reading"), new double[] {1, 0}, row.number("variance")));
            near(row, "innovation", innovation.value());
            near(row, "innovation_variance", innovation.variance());
            near(row, "log_likelihood", innovation.logLikelihood());
            near(row, "filtered", filter.belief());
            sum += row.number("log_likelihood");
        }
        assertThat(filter.logLikelihood()).isCloseTo(sum, within(1e-8));
        List<Belief> smoothed = Smoother.smooth(filter);
        for (int i = 0; i < smoothed.size(); i++) {
            near(table.rows().get(i), "smoothed", smoothed.get(i));
        }
    }

    private static void near(ReferenceTable.Row row, String kind, Belief belief) {
        near(row, kind + "_level", belief.mean(0));
        near(row, kind + "_use", belief.mean(1));
        near(row, kind + "_level_variance", belief.covariance()[0][0]);
        near(row, kind + "_cov", belief.covariance()[0][1]);
        near(row, kind + "_use_variance", belief.covariance()[1][1]);
    }

    private static void near(ReferenceTable.Row row, String column, double got) {
        Close.absolute(row, column, got, 1e-8);
    }

    @Test
    void aChainOfDriversIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new StructuralModel(
                        new double[][] {{0, 1, 0, 0}, {0, 0, 1, 0}, {0, 0, 0, 1}, {0, 0, 0, 0}}, List.of()))
                .withMessageContaining("only one may");
    }
}
