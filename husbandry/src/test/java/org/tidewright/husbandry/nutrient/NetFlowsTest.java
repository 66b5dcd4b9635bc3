package org.tidewright.husbandry.nutrient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Worked by hand. */
class NetFlowsTest {
    private static Map<String, Double> all(NetFlows<String> flows) {
        Map<String, Double> all = new HashMap<>();
        flows.each((from, to, amount) -> all.put(from + ">" + to, amount));
        return all;
    }

    @Test
    void whatSettlesAndRotsAgainLeavesTheDifference() {
        NetFlows<String> flows = new NetFlows<>();
        flows.add("water", "ground", 30);
        flows.add("ground", "water", 34);
        flows.cancelRounds();
        assertThat(all(flows)).isEqualTo(Map.of("ground>water", 4.0));
    }

    @Test
    void aRoundOfThreeGivesUpItsLeastAndEveryNodeGainsWhatItDid() {
        NetFlows<String> flows = new NetFlows<>();
        flows.add("food", "water", 10);
        flows.add("water", "algae", 8);
        flows.add("algae", "ground", 5);
        flows.add("ground", "water", 3);
        Map<String, Double> before = new HashMap<>();
        for (String node : new String[] {"food", "water", "algae", "ground"}) {
            before.put(node, flows.net(node));
        }
        flows.cancelRounds();
        assertThat(all(flows)).isEqualTo(Map.of("food>water", 10.0, "water>algae", 5.0, "algae>ground", 2.0));
        before.forEach((node, net) -> assertThat(flows.net(node)).as(node).isCloseTo(net, within(1e-12)));
    }

    @Test
    void twoRoundsThroughOneNodeBothGo() {
        NetFlows<String> flows = new NetFlows<>();
        flows.add("a", "b", 1);
        flows.add("b", "a", 1);
        flows.add("a", "c", 2);
        flows.add("c", "a", 2);
        flows.cancelRounds();
        assertThat(all(flows)).isEmpty();
    }
}
