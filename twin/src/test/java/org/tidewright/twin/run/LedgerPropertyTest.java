package org.tidewright.twin.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Layout;
import org.tidewright.twin.contract.Shape;
import org.tidewright.twin.contract.Stock;

/** Whatever mechanisms move, nothing is made or lost, and the same run takes the same course. */
class LedgerPropertyTest {
    private static final int CASES = 200;
    private static final Accuracy SLOW = new Accuracy(1e-6, 1e-6, 1e-3, 1e-3, 3600);

    /** A network of bodies that trade water, vapour, heat and oxygen at rates that follow their stocks. */
    private record Trade(Network network, State start) {
        static Trade drawnFrom(Draw draw) {
            Network.Builder builder =
                    new Network.Builder(Layout.OF_WATER_AND_HEAT, draw.between(995, 1030), draw.between(3900, 4200));
            List<Body> bodies = new ArrayList<>();
            int count = draw.whole(2, 7);
            for (int i = 0; i < count; i++) {
                Shape shape = Shape.upright(draw.between(0.05, 1), 0, 0);
                bodies.add(builder.body("body " + i, shape, draw.between(0, 1), draw.between(1e5, 1e6)));
            }
            int transfers = draw.whole(1, 12);
            for (int i = 0; i < transfers; i++) {
                Body from = bodies.get(draw.whole(0, count - 1));
                Body to = bodies.get(draw.whole(0, count - 1));
                double rate = draw.between(1e-5, 1e-2);
                switch (draw.whole(0, 3)) {
                    case 0 ->
                        builder.add((now, out) -> out.water(from, to, rate * (now.volume(from) - now.volume(to))));
                    case 1 -> builder.add((now, out) -> out.vapour(from, to, rate * now.volume(from), 2.44e6));
                    case 2 ->
                        builder.add((now, out) ->
                                out.heat(from, to, 1e3 * rate * (now.temperature(from) - now.temperature(to))));
                    default ->
                        builder.add((now, out) -> out.move(Stock.OXYGEN, from, to, rate * now.oxygen(from) * 1e-3));
                }
            }
            Network network = builder.build();
            State start = new State(network);
            for (Body body : bodies) {
                start.fill(body, draw.between(0.01, 1), draw.between(5, 35), draw.between(0, 40), draw.between(0, 0.3));
            }
            return new Trade(network, start);
        }

        State after(double seconds) {
            State state = start.copy();
            new Run(network, network.usualParameters(), state, SLOW).until(seconds);
            return state;
        }
    }

    @Test
    void everyStockIsConservedOverAllBodies() {
        SeededCases.check(CASES, draw -> {
            Trade trade = Trade.drawnFrom(draw);
            State end = trade.after(draw.between(1, 3000));
            for (Stock stock : Layout.OF_WATER_AND_HEAT.stocks()) {
                double before = trade.start().total(stock);
                assertThat(end.total(stock)).as(stock.name()).isCloseTo(before, within(1e-12 * before));
            }
        });
    }

    @Test
    void theSameRunTakesTheSameCourseBitForBit() {
        SeededCases.check(CASES / 4, draw -> {
            Trade trade = Trade.drawnFrom(draw);
            double seconds = draw.between(1, 3000);
            assertThat(trade.after(seconds).stocks())
                    .isEqualTo(trade.after(seconds).stocks());
        });
    }
}
