package org.tidewright.twin.system;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.twin.TestPlans;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Run;

/** The accuracy of a year against runs a thousand times closer. */
class SystemAccuracyTest {
    private static final double DAY = 86_400;
    private static final Accuracy CLOSE = new Accuracy(1e-8, 1e-9, 1e-5, 1e-6, 7200);

    private final SystemTwin twin = SystemTwin.of(TestPlans.example("harbour-room"));

    @Test
    void threeWeeksAtTheAccuracyOfAYearDifferFromAThousandTimesCloserByLessThanAnyTestCouldTell() {
        View usual = after(21, Accuracy.OF_A_YEAR, 1);
        View close = after(21, CLOSE, 1);
        for (Body water : twin.waters()) {
            assertThat(usual.temperature(water)).isCloseTo(close.temperature(water), within(0.01));
            assertThat(usual.salinity(water)).isCloseTo(close.salinity(water), within(0.01));
            assertThat(usual.solution(water).ph())
                    .isCloseTo(close.solution(water).ph(), within(0.002));
            for (Stock stock : new Stock[] {
                Stock.OXYGEN, Stock.ALKALINITY, Stock.CALCIUM, Stock.MAGNESIUM, Stock.NITRATE, Stock.PHOSPHATE
            }) {
                double exact = close.concentration(water, stock);
                assertThat(usual.concentration(water, stock))
                        .as(water + " " + stock)
                        .isCloseTo(exact, within(1e-3 * exact));
            }
        }
    }

    @Test
    void aSumpThatLosesWaterKeepsTheSalinityOfTheDisplayItExchangesWith() {
        View usual = after(3, Accuracy.OF_A_YEAR, 0);
        Body sump = twin.network().body("sump");
        assertThat(usual.volume(sump))
                .isLessThan(0.95 * twin.start(twin.network().usualParameters()).get(sump, Stock.WATER));
        assertThat(usual.salinity(sump)).isCloseTo(usual.salinity(twin.display()), within(0.02));
    }

    private View after(double days, Accuracy accuracy, double topOff) {
        double[] parameters = twin.network().usualParameters();
        Run run = new Run(twin.network(), parameters, twin.start(parameters), accuracy);
        run.set(twin.levers().get("top-off").setting(), topOff);
        run.until(days * DAY);
        return run.now();
    }
}
