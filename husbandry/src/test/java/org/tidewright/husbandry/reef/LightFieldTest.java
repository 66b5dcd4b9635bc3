package org.tidewright.husbandry.reef;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.model.Plan;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;
import org.tidewright.twin.law.light.LightThroughWater;

class LightFieldTest {
    private static final double MICRO = 1e-6;

    /** 1.645 standard errors either way hold 90 of 100. */
    private static final double NINETY = 1.645;

    private static Plan tank(String par, String points) {
        return ReefPlans.plan(par.isEmpty() ? "" : ReefPlans.light(par), points, "");
    }

    private static LightField field(Plan plan) {
        return LightField.of(plan).orElseThrow();
    }

    private static Place somewhere(Draw draw) {
        return new Place(draw.between(0, 1.2), draw.between(0, 0.5), draw.between(0, 0.49));
    }

    @Test
    void halfWayUpTheRockTheStatedLightIsTheMeanOfTheTank() {
        LightModel model = LightModel.of(tank("200 µmol/m²/s", ""));
        double sum = 0;
        for (int i = 0; i < 120; i++) {
            for (int j = 0; j < 50; j++) {
                sum += model.at(new Place((i + 0.5) / 100, (j + 0.5) / 100, 0.18));
            }
        }
        assertThat(sum / 6000).isCloseTo(200 * MICRO, Percentage.withPercentage(0.5));
    }

    @Test
    void withoutPointsLightIsTheModelsAndKnownWithinAFactorOfTwo() {
        Plan plan = tank("200 µmol/m²/s", "");
        Place place = new Place(0.4, 0.2, 0.3);
        PointValue light = field(plan).at(place);
        assertThat(light.value()).isCloseTo(LightModel.of(plan).at(place), within(1e-15));
        // A fifth for the reference, 0.35 from place to place, 1/m over 12 cm: 0.42 of the logarithm.
        assertThat(light.logError()).isCloseTo(Math.sqrt(0.2 * 0.2 + 0.35 * 0.35 + 0.12 * 0.12), within(1e-9));
        assertThat(light.high() / light.value()).isCloseTo(2, within(0.05));
        assertThat(field(plan).isMeasured(place)).isFalse();
    }

    @Test
    void theModelFallsWithDepthEverywhere() {
        LightField field = field(tank("200 µmol/m²/s", ""));
        SeededCases.check(200, draw -> {
            Place place = somewhere(draw);
            Place deeper = new Place(place.x(), place.y(), place.height() - draw.between(0.001, 0.5));
            assertThat(field.at(deeper).value()).isLessThan(field.at(place).value());
        });
    }

    @Test
    void theMiddleIsAboutTwiceAsBrightAsTheCornersAtMidDepth() {
        LightModel model = LightModel.of(tank("200 µmol/m²/s", ""));
        double middle = model.at(new Place(0.6, 0.25, 0.25));
        double corner = model.at(new Place(0.02, 0.02, 0.25));
        assertThat(middle / corner).isBetween(1.8, 3.2);
    }

    @Test
    void aPointStatedAsExactIsMetExactly() {
        SeededCases.check(40, draw -> {
            StringBuilder points = new StringBuilder("  light_points:\n");
            List<Place> places = new ArrayList<>();
            List<Double> values = new ArrayList<>();
            for (int i = 0; i < draw.whole(1, 10); i++) {
                places.add(new Place(0.1 * i + 0.02, draw.between(0.02, 0.48), draw.between(0.02, 0.45)));
                values.add(draw.between(40, 500) * MICRO);
                points.append(ReefPlans.lightPoint(places.get(i), values.get(i)));
            }
            LightField field = field(tank("200 µmol/m²/s", points.toString()));
            for (int i = 0; i < places.size(); i++) {
                PointValue light = field.at(places.get(i));
                assertThat(light.value()).isCloseTo(values.get(i), Percentage.withPercentage(0.2));
                assertThat(light.logError()).isCloseTo(0.05, within(0.001));
                assertThat(field.isMeasured(places.get(i))).isTrue();
            }
        });
    }

    @Test
    void aPointStatedWithDoubtIsWeighedAgainstTheModel() {
        Place place = new Place(0.6, 0.25, 0.18);
        String doubted =
                "  light_points:\n    - {x: 60 cm, y: 25 cm, height: 18 cm, par: 400 µmol/m²/s ± 160 µmol/m²/s}\n";
        double model = LightModel.of(tank("200 µmol/m²/s", "")).at(place);
        double prior = 0.2 * 0.2 + 0.35 * 0.35;
        double weight = prior / (prior + 0.4 * 0.4);
        double expected = model * Math.pow(400 * MICRO / model, weight);
        assertThat(field(tank("200 µmol/m²/s", doubted)).at(place).value())
                .isCloseTo(expected, Percentage.withPercentage(1e-4));
    }

    @Test
    void farFromThePointsOnlyAFactorForTheWholeTankAndASlopeAreLeftOfThem() {
        Plan bare = tank("200 µmol/m²/s", "");
        Place point = new Place(0.05, 0.25, 0.18);
        Place far = new Place(1.15, 0.25, 0.18);
        double shown = 1.5 * LightModel.of(bare).at(point);
        LightField field = field(tank("200 µmol/m²/s", "  light_points:\n" + ReefPlans.lightPoint(point, shown)));
        double ofTheTank = 0.04 / (0.04 + 0.35 * 0.35);
        // 1.1 m are 4.4 lengths of the rough part: it shares less than one part in a hundred.
        assertThat(Math.log(field.at(far).value() / LightModel.of(bare).at(far)))
                .isCloseTo(ofTheTank * Math.log(1.5), within(0.01));
        assertThat(field.isMeasured(far)).isFalse();
    }

    /** Lambert's law with another attenuation than the model's, measured in one column: it is found again between points. */
    @Test
    void aColumnThatFollowsLambertsLawIsFoundAgain() {
        ToDoubleFunction<Place> law = place -> 420 * MICRO * LightThroughWater.left(2.4, 0.5 - place.height());
        StringBuilder points = new StringBuilder("  light_points:\n");
        for (double height : new double[] {0.05, 0.15, 0.25, 0.35, 0.45}) {
            Place place = new Place(0.6, 0.25, height);
            points.append(ReefPlans.lightPoint(place, law.applyAsDouble(place)));
        }
        LightField field = field(tank("200 µmol/m²/s", points.toString()));
        double before = 0;
        for (double height = 0.05; height <= 0.45; height += 0.01) {
            Place place = new Place(0.6, 0.25, height);
            double light = field.at(place).value();
            assertThat(light).isCloseTo(law.applyAsDouble(place), Percentage.withPercentage(2));
            assertThat(light).isGreaterThan(before);
            before = light;
        }
    }

    @Test
    void aTankWithoutLightOrPointsHasNoLightToTell() {
        assertThat(LightField.of(tank("", ""))).isEmpty();
    }

    @Test
    void aTankWhoseLightsNobodyDescribedIsKnownByItsPoints() {
        Place place = new Place(0.6, 0.25, 0.18);
        LightField field = field(tank("", "  light_points:\n" + ReefPlans.lightPoint(place, 150 * MICRO)));
        assertThat(field.at(place).value()).isCloseTo(150 * MICRO, Percentage.withPercentage(0.1));
        assertThat(field.at(new Place(0.1, 0.25, 0.18)).logError()).isGreaterThan(0.3);
    }

    /**
     * Invented truths the model knows nothing of: one to three small lamps somewhere over the water, falling off with the
     * square of the distance and the cosine at the place, some light from everywhere, another attenuation, and rock that
     * shades four spots of 15 cm. Each of 45 points of a grid is left out in turn; the other 44 should tell it better than
     * the model alone, even one that was given the right mean, and as well as they claim.
     */
    @Test
    void pointsLeftOutOfAnInventedGridLieWhereTheOthersSay() {
        int[] held = new int[2];
        double[] squares = new double[2];
        SeededCases.check(30, draw -> {
            ToDoubleFunction<Place> truth = smallLamps(draw);
            List<Place> grid = new ArrayList<>();
            StringBuilder points = new StringBuilder("  light_points:\n");
            for (int i = 0; i < 5; i++) {
                for (int j = 0; j < 3; j++) {
                    for (int k = 0; k < 3; k++) {
                        Place place = new Place(0.1 + 0.25 * i, 0.08 + 0.17 * j, 0.05 + 0.14 * k);
                        grid.add(place);
                        points.append(ReefPlans.lightPoint(place, truth.applyAsDouble(place)));
                    }
                }
            }
            Plan plan = tank("160 µmol/m²/s", points.toString());
            LightField field = field(plan);
            LightModel model = LightModel.of(plan);
            double scale = grid.stream()
                    .mapToDouble(place -> Math.log(truth.applyAsDouble(place) / model.at(place)))
                    .average()
                    .orElseThrow();
            for (int i = 0; i < grid.size(); i++) {
                PointValue expected = field.leftOut(plan, i);
                double off = Math.log(truth.applyAsDouble(grid.get(i)) / expected.value());
                double modelsOff = Math.log(truth.applyAsDouble(grid.get(i)) / model.at(grid.get(i))) - scale;
                squares[0] += off * off;
                squares[1] += modelsOff * modelsOff;
                held[0] += Math.abs(off) <= NINETY * expected.logError() ? 1 : 0;
                held[1]++;
            }
        });
        assertThat(Math.sqrt(squares[0] / held[1])).as("off by the others").isLessThan(0.15);
        assertThat(squares[0]).as("against the model alone").isLessThan(0.25 * squares[1]);
        assertThat(held[0] / (double) held[1]).as("share within 90 %").isBetween(0.85, 0.99);
    }

    private static ToDoubleFunction<Place> smallLamps(Draw draw) {
        int lamps = draw.whole(1, 3);
        double[][] at = new double[lamps][];
        for (int i = 0; i < lamps; i++) {
            at[i] = new double[] {draw.between(0.2, 1.0), draw.between(0.15, 0.35), draw.between(0.1, 0.3)};
        }
        double attenuation = draw.between(0.1, 0.6);
        double everywhere = draw.between(0.05, 0.3);
        double strength = draw.between(60, 250) * MICRO;
        double[][] shades = new double[4][];
        for (int i = 0; i < shades.length; i++) {
            shades[i] = new double[] {
                draw.between(0, 1.2), draw.between(0, 0.5), draw.between(0, 0.35), draw.between(0.3, 1.5)
            };
        }
        return place -> {
            double depth = 0.5 - place.height();
            double sum = everywhere;
            for (double[] lamp : at) {
                double down = lamp[2] + depth / 1.34;
                double beside = Math.hypot(place.x() - lamp[0], place.y() - lamp[1]);
                double square = down * down + beside * beside;
                sum += 0.25 * down * down / (square * square) / lamps;
            }
            for (double[] shade : shades) {
                double apart = place.from(new Place(shade[0], shade[1], shade[2])) / 0.15;
                sum *= Math.exp(-shade[3] * Math.exp(-apart * apart / 2));
            }
            return strength * sum * LightThroughWater.left(attenuation, depth);
        };
    }
}
