package org.tidewright.twin.system;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tidewright.twin.TestPlans;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Run;

class BatteryTest {
    private static final double DAY = 86_400;
    private static final double HOUR = 3600;

    private final SystemTwin twin = SystemTwin.of(TestPlans.example("harbour-room"));
    private final Body battery = twin.network().body("battery");

    @Test
    void aBatteryIsFullUntilTheMainsFailAndThenGivesPower() {
        double[] parameters = twin.network().usualParameters();
        Run run = new Run(twin.network(), parameters, twin.start(parameters), Accuracy.OF_A_YEAR);
        double full = run.now().stock(battery, Stock.HEAT);
        run.until(3 * DAY);
        assertThat(run.now().stock(battery, Stock.HEAT)).isEqualTo(full).isPositive();
        run.set(twin.levers().get("power").setting(), 0);
        run.until(3 * DAY + HOUR);
        assertThat(run.now().stock(battery, Stock.HEAT)).isLessThan(full).isPositive();
    }
}
