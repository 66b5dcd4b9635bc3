package org.tidewright.twin.system;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidewright.seawater.gas.OxygenSolubility;
import org.tidewright.twin.TestPlans;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/**
 * The example systems are invented and must be believable: what twelve weeks of their regime lead to is near the water they
 * say they have.
 */
class ExamplesHoldTest {
    private static final double DAY = 86_400;
    private static final int WEEKS = 12;

    /** What a keeper would see of a system on one day. */
    private record Seen(double nitrate, double phosphate, double alkalinity, double fish) {}

    private final List<Seen> weeks = new ArrayList<>();
    private final List<Double> ph = new ArrayList<>();
    private final List<Double> oxygen = new ArrayList<>();

    private void live(String example) {
        SystemTwin twin = SystemTwin.of(TestPlans.example(example));
        SystemTwin.Settled settled = twin.settled(twin.network().usualParameters());
        Run run = new Run(twin.network(), settled.parameters(), settled.state(), Accuracy.OF_A_YEAR);
        for (int week = 0; week <= WEEKS; week++) {
            run.until(week * 7 * DAY);
            weeks.add(seen(twin, run.now()));
        }
        for (int half = 0; half < 48; half++) {
            run.until((WEEKS * 7 + half / 48.0) * DAY);
            View now = run.now();
            ph.add(now.solution(twin.display()).ph());
            oxygen.add(now.oxygen(twin.display())
                    / OxygenSolubility.perVolume(
                            now.temperature(twin.display()), twin.water().salinity()));
        }
    }

    private static Seen seen(SystemTwin twin, View now) {
        Body display = twin.display();
        return new Seen(
                now.concentration(display, Stock.NITRATE),
                now.concentration(display, Stock.PHOSPHATE),
                now.concentration(display, Stock.ALKALINITY),
                twin.fish(now));
    }

    @ParameterizedTest
    @ValueSource(strings = {"harbour-room", "fifty-five-gallon", "window-nano"})
    void twelveWeeksLeadToTheWaterStated(String example) {
        live(example);
        Seen first = weeks.get(0);
        Seen last = weeks.get(WEEKS);
        assertThat(last.nitrate() / first.nitrate()).as("nitrate").isCloseTo(1, within(0.5));
        assertThat(last.phosphate() / first.phosphate()).as("phosphate").isCloseTo(1, within(0.5));
        assertThat(last.alkalinity() / first.alkalinity()).as("alkalinity").isCloseTo(1, within(0.15));
        // Neither thin nor twice as heavy.
        assertThat(last.fish() / first.fish()).as("fish").isBetween(0.95, 1.5);
    }

    /** Usual of home reefs: a pH that swings by 0.15–0.4 and oxygen from 80 to 125 % of saturation; common practice. */
    @ParameterizedTest
    @ValueSource(strings = {"harbour-room", "fifty-five-gallon", "window-nano"})
    void pHAndOxygenSwingAsFarAsInUsualReefTanks(String example) {
        live(example);
        double swing = ph.stream().mapToDouble(each -> each).max().orElseThrow()
                - ph.stream().mapToDouble(each -> each).min().orElseThrow();
        assertThat(swing).isBetween(0.15, 0.4);
        assertThat(oxygen).allSatisfy(each -> assertThat(each).isBetween(0.8, 1.25));
    }

    /** 180 g left, 300 g after a fortnight: what the plan says, its phosphate between the stated 0.06 mg/L and half of it. */
    @Test
    void theRefugiumIsHarvestedOfAboutWhatThePlanSays() {
        SystemTwin twin = SystemTwin.of(TestPlans.example("harbour-room"));
        SystemTwin.Settled settled = twin.settled(twin.network().usualParameters());
        State state = settled.state();
        Body algae = twin.network().body("algae in the refugium");
        Run run = new Run(twin.network(), settled.parameters(), state, Accuracy.OF_A_YEAR);
        run.until(0.6 * DAY);
        double left = state.get(algae, Stock.ORGANIC_NITROGEN);
        run.until(14.4 * DAY);
        assertThat(state.get(algae, Stock.ORGANIC_NITROGEN) / left).isCloseTo(300.0 / 180, within(0.17));
    }
}
