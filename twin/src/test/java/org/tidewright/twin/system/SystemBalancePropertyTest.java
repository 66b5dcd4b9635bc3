package org.tidewright.twin.system;

import static java.lang.Double.NaN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.model.Plan;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;
import org.tidewright.twin.RandomPlans;
import org.tidewright.twin.contract.Balance;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.run.Account;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** Whatever lives in a system and however it is run, nothing is made or lost, and every account adds up. */
class SystemBalancePropertyTest {
    private static final double DAY = 86_400;
    private static final int YEARS = 12;
    private static final int MONTHS = 40;

    @Test
    void aYearOfAnyPlanKeepsWaterSaltHeatAndEveryElementToABillionth() {
        SeededCases.check(YEARS, draw -> {
            SystemTwin twin = SystemTwin.of(RandomPlans.any(draw));
            double[] parameters = drawn(twin, draw);
            State state = twin.start(parameters);
            Map<Balance, Double> before = totals(state);
            Map<Balance, Double> size = sizes(twin, state);
            Run run = new Run(twin.network(), parameters, state, Accuracy.OF_A_YEAR);
            moveLevers(twin, run, draw);
            run.until(365 * DAY);
            sizes(twin, state).forEach((balance, later) -> size.merge(balance, later, Math::max));
            for (Balance balance : Balance.values()) {
                assertThat(state.total(balance))
                        .as(balance.name())
                        .isCloseTo(before.getOrDefault(balance, NaN), within(1e-9 * size.getOrDefault(balance, 0.0)));
            }
        });
    }

    @Test
    void theAccountOfAMonthAddsUpToTheChangeOfEveryStockOfTheWater() {
        SeededCases.check(MONTHS, draw -> {
            SystemTwin twin = SystemTwin.of(RandomPlans.any(draw));
            double[] parameters = drawn(twin, draw);
            State state = twin.start(parameters);
            State before = state.copy();
            Run run = new Run(twin.network(), parameters, state, Accuracy.OF_A_YEAR).keepAccount();
            moveLevers(twin, run, draw);
            run.until(draw.between(1, 30) * DAY);
            for (Stock stock : Stock.values()) {
                double change = 0;
                double moved = 0;
                for (Body body : twin.waters()) {
                    change += state.get(body, stock) - before.get(body, stock);
                    moved += Math.abs(before.get(body, stock));
                }
                double told = 0;
                for (Account.Line line : run.account().of(stock, twin.waters())) {
                    told += line.amount();
                    moved += Math.abs(line.amount());
                }
                assertThat(told).as(stock.name()).isCloseTo(change, within(1e-11 * moved));
            }
        });
    }

    @Test
    void noBodyEndsAYearWithLessThanNothing() {
        SeededCases.check(YEARS, draw -> {
            Plan plan = RandomPlans.any(draw);
            SystemTwin twin = SystemTwin.of(plan);
            double[] parameters = drawn(twin, draw);
            State state = twin.start(parameters);
            new Run(twin.network(), parameters, state, Accuracy.OF_A_YEAR).until(200 * DAY);
            for (Body body : twin.network().bodies()) {
                for (Stock stock : body.held()) {
                    if (!body.isOutside() && stock != Stock.ALKALINITY && stock != Stock.HEAT) {
                        double least = -10 * stock.grain() * (body.holds(Stock.WATER) ? 1 : 0.1);
                        assertThat(state.get(body, stock))
                                .as(body + " " + stock)
                                .isGreaterThan(least);
                    }
                }
            }
        });
    }

    @Test
    void theSameYearTakesTheSameCourseBitForBit() {
        SeededCases.check(3, draw -> {
            SystemTwin twin = SystemTwin.of(RandomPlans.any(draw));
            double[] parameters = drawn(twin, draw);
            assertThat(afterAMonth(twin, parameters)).isEqualTo(afterAMonth(twin, parameters));
        });
    }

    private static double[] afterAMonth(SystemTwin twin, double[] parameters) {
        State state = twin.start(parameters);
        Run run = new Run(twin.network(), parameters, state, Accuracy.OF_A_YEAR);
        run.until(30 * DAY);
        View now = run.now();
        return twin.waters().stream()
                .flatMapToDouble(body -> Arrays.stream(Stock.values()).mapToDouble(stock -> now.stock(body, stock)))
                .toArray();
    }

    private static double[] drawn(SystemTwin twin, Draw draw) {
        return twin.network().parameters().stream()
                .mapToDouble(parameter -> parameter.at(draw.between(-1.6, 1.6)))
                .toArray();
    }

    /** A few things change or break on the way. */
    private static void moveLevers(SystemTwin twin, Run run, Draw draw) {
        for (Lever lever : twin.levers().all()) {
            if (draw.whole(1, 6) == 1) {
                double value = switch (lever.kind()) {
                    case FACTOR -> draw.between(0, 2.5);
                    case AMOUNT -> lever.setting().initial() * draw.between(0.5, 1.5);
                    case SWITCH, FLOAT_SWITCH -> 0;
                };
                double from = draw.between(0, 20) * DAY;
                run.setAt(from, lever.setting(), value);
                run.setAt(
                        from + draw.between(0.05, 3) * DAY,
                        lever.setting(),
                        lever.setting().initial());
            }
        }
    }

    private static Map<Balance, Double> totals(State state) {
        Map<Balance, Double> totals = new EnumMap<>(Balance.class);
        for (Balance balance : Balance.values()) {
            totals.put(balance, state.total(balance));
        }
        return totals;
    }

    /** What a balance is made of, all parts counted positive. */
    private static Map<Balance, Double> sizes(SystemTwin twin, State state) {
        Map<Balance, Double> sizes = new EnumMap<>(Balance.class);
        for (Balance balance : Balance.values()) {
            double size = 0;
            for (Body body : twin.network().bodies()) {
                for (Stock stock : body.held()) {
                    size += body.isOutside() ? 0 : Math.abs(balance.weight(stock) * state.get(body, stock));
                }
            }
            sizes.put(balance, size);
        }
        return sizes;
    }
}
