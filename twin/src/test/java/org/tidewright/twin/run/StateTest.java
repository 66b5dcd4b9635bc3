package org.tidewright.twin.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.twin.contract.Balance;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Layout;
import org.tidewright.twin.contract.Shape;
import org.tidewright.twin.contract.Stock;

class StateTest {
    /** A tenth of the water takes a tenth of all that is dissolved, and its own heat; the solids' heat stays. */
    @Test
    void pouredWaterTakesAlongItsShareAndMixesByMass() {
        Network.Builder builder = new Network.Builder(Layout.OF_ALL, 1000, 4000);
        Body upper = builder.body("upper", Shape.none(), 0, 1e5);
        Body lower = builder.body("lower", Shape.none(), 0, 0);
        State state = new State(builder.build())
                .fill(upper, 0.5, 30, 35, 0.2)
                .fill(lower, 0.15, 20, 35, 0.1)
                .dissolve(upper, Stock.NITRATE, 2);
        double heat = state.total(Balance.HEAT);
        state.pour(upper, lower, 0.05);
        assertThat(state.get(upper, Stock.WATER)).isCloseTo(0.45, within(1e-15));
        assertThat(state.get(lower, Stock.NITRATE)).isCloseTo(0.1, within(1e-15));
        assertThat(state.get(lower, Stock.OXYGEN)).isCloseTo(0.15 * 0.1 + 0.05 * 0.2, within(1e-15));
        assertThat(state.get(lower, Stock.HEAT) / (0.2 * 4e6)).isCloseTo(22.5, within(1e-12));
        assertThat(state.get(upper, Stock.HEAT) / (0.45 * 4e6 + 1e5)).isCloseTo(30, within(1e-12));
        assertThat(state.total(Balance.HEAT)).isCloseTo(heat, within(1e-15 * heat));
    }

    private static Network twoBodies(String second, Stock... holds) {
        Network.Builder builder = new Network.Builder(Layout.OF_ALL, 1000, 4000);
        builder.body("tank", Shape.none(), 0, 0);
        builder.pool(second, holds);
        return builder.build();
    }

    @Test
    void goesOnInAnotherNetworkOfTheSameBodiesAndLeavesTheFirstAsItIs() {
        Network before = twoBodies("fish", Stock.ORGANIC_NITROGEN);
        Network after = twoBodies("fish", Stock.ORGANIC_NITROGEN);
        State state = new State(before).set(before.body("fish"), Stock.ORGANIC_NITROGEN, 3);
        State moved = state.in(after).set(after.body("tank"), Stock.WATER, 1);
        assertThat(moved.get(after.body("fish"), Stock.ORGANIC_NITROGEN)).isEqualTo(3);
        assertThat(moved.total(Balance.NITROGEN)).isEqualTo(state.total(Balance.NITROGEN));
        assertThat(state.get(before.body("tank"), Stock.WATER)).isZero();
    }

    @Test
    void refusesANetworkOfOtherBodies() {
        State state = new State(twoBodies("fish", Stock.ORGANIC_NITROGEN));
        for (Network other :
                new Network[] {twoBodies("snails", Stock.ORGANIC_NITROGEN), twoBodies("fish", Stock.ORGANIC_CARBON)}) {
            assertThatThrownBy(() -> state.in(other))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("same bodies");
        }
    }
}
