package org.tidewright.twin.system;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.tidewright.numerics.sample.Quantiles;
import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.source.Basis;
import org.tidewright.testkit.ChangedText;
import org.tidewright.twin.TestPlans;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.ensemble.Ensemble;
import org.tidewright.twin.run.State;

/** What the plan says of its own doubt, ± one standard error, is drawn: 1.645 of them on either side hold 90 of 100. */
class StatedDoubtTest {
    private static final int DRAWS = 2000;

    /** dKH in 1 mol/m³: 10 mg/L of calcium oxide, 56.077 g/mol, are one degree. */
    private static final double DEGREES = 56.077 / 20;

    /** Standard normal quantile of 0.95. */
    private static final double REACH = 1.6449;

    private static Plan harbourRoom(String... replacements) {
        return TestPlans.read(ChangedText.of(Examples.text("harbour-room"), replacements));
    }

    private static Quantiles starts(Plan plan, ToDoubleFunction<Start> read) {
        SystemTwin twin = SystemTwin.of(plan);
        List<Double> drawn = new Ensemble(twin.network().parameters(), DRAWS, 7)
                .map(parameters -> read.applyAsDouble(new Start(twin, twin.start(parameters))));
        return Quantiles.of(drawn.stream().mapToDouble(Double::doubleValue).toArray());
    }

    private record Start(SystemTwin twin, State state) {
        double dissolved(Stock stock) {
            return state.get(twin.display(), stock) / state.get(twin.display(), Stock.WATER);
        }

        double standing(String body) {
            return state.get(twin.network().body(body), Stock.ORGANIC_NITROGEN);
        }
    }

    private static double alkalinity(Start start) {
        return DEGREES * start.dissolved(Stock.ALKALINITY);
    }

    @Test
    void alkalinityOfEightDegreesGiveOrTakeThreeTenthsStartsHalfADegreeToEitherSide() {
        Quantiles drawn = starts(harbourRoom(), StatedDoubtTest::alkalinity);
        assertThat(drawn.at(0.05)).isCloseTo(8 - REACH * 0.3, within(0.01));
        assertThat(drawn.at(0.5)).isCloseTo(8, within(0.01));
        assertThat(drawn.at(0.95)).isCloseTo(8 + REACH * 0.3, within(0.01));
    }

    @Test
    void whatIsStatedWithoutADoubtStartsAsStated() {
        Quantiles drawn = starts(harbourRoom("8.0 dKH ± 0.3 dKH", "8.0 dKH"), StatedDoubtTest::alkalinity);
        assertThat(drawn.at(0)).isEqualTo(drawn.at(1)).isCloseTo(8, within(1e-4));
    }

    @Test
    void theUsualRunIsThatOfAPlanWithoutAnyDoubt() {
        SystemTwin doubted = SystemTwin.of(harbourRoom());
        SystemTwin sure =
                SystemTwin.of(TestPlans.read(Examples.text("harbour-room").replaceAll(" ± [0-9.]+ [^,}\n]+", "")));
        assertThat(sure.network().parameters())
                .hasSizeLessThan(doubted.network().parameters().size());
        State with = doubted.settled(doubted.network().usualParameters()).state();
        State without = sure.settled(sure.network().usualParameters()).state();
        for (Stock stock : doubted.network().layout().stocks()) {
            assertThat(with.get(doubted.display(), stock))
                    .as(stock.toString())
                    .isCloseTo(without.get(sure.display(), stock), withinPercentage(1e-9));
        }
    }

    @Test
    void whatCannotBeNegativeIsNeverDrawnSo() {
        Quantiles drawn = starts(
                harbourRoom("0.06 mg/L ± 0.02 mg/L", "0.06 mg/L ± 0.06 mg/L"),
                start -> start.dissolved(Stock.PHOSPHATE));
        assertThat(drawn.at(0)).isZero();
    }

    @Test
    void algaeAndSaltAreDrawnToo() {
        Quantiles algae = starts(harbourRoom(), start -> start.standing("algae in the refugium"));
        // 300 g ± 50 g.
        assertThat(algae.at(0.95) / algae.at(0.5)).isCloseTo(1 + REACH / 6, within(0.01));
        Quantiles salt = starts(
                harbourRoom("salinity: 35\n  temperature: 25.5", "salinity: 35 ± 0.5\n  temperature: 25.5"),
                start -> start.dissolved(Stock.SALT));
        assertThat(salt.at(0.05) / salt.at(0.5)).isCloseTo(1 - REACH * 0.5 / 35, within(1e-3));
    }

    /** Alkalinity use stands for the growth of corals and coralline algae together: drawn once, with the doubt stated. */
    @Test
    void anAlkalinityUseIsKnownAsWellAsStatedAndToATenthWhereNothingIsStated() {
        assertThat(parameter(harbourRoom(), "alkalinity use").high()
                        / parameter(harbourRoom(), "alkalinity use").usual())
                .isCloseTo(1 + REACH * 0.2, within(1e-3));
        Plan silent = harbourRoom("1.0 dKH/d ± 0.2 dKH/d", "1.0 dKH/d");
        Parameter tenth = parameter(silent, "alkalinity use");
        assertThat(tenth.high() / tenth.usual()).isCloseTo(1.1, within(1e-9));
        assertThat(tenth.source()).contains("without a doubt of its own");
        assertThat(tenth.basis()).isEqualTo(Basis.YOUR_PLAN);
    }

    private static Parameter parameter(Plan plan, String name) {
        return SystemTwin.of(plan).network().parameters().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
