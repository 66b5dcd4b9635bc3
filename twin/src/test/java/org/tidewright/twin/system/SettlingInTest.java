package org.tidewright.twin.system;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidewright.twin.TestPlans;
import org.tidewright.twin.contract.Balance;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.ensemble.Ensemble;
import org.tidewright.twin.run.Account;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** A settled system does what its plan states, and months of the same regime change nothing the plan does not. */
class SettlingInTest {
    private static final double DAY = 86_400;

    /** Alkalinity the example's bicarbonate brings with 1 m³ of its 80 g/L: 84.007 g/mol, one charge each. */
    private static final double PER_BICARBONATE = 80e3 / 84.007;

    /** Its other dose of alkalinity: 2 L of limewater at 90 % of saturation, 43 mol/m³ of charge at 21 °C (from memory). */
    private static final double FROM_LIMEWATER = 2e-3 * 0.9 * 43;

    private final SystemTwin harbour = SystemTwin.of(TestPlans.example("harbour-room"));
    private final Parameter use = parameter(harbour, "alkalinity use");

    @Test
    void aStatedUseIsWhatIsUsedWhileDosesHoldTheWaterAtWhatThePlanStates() {
        double[] usual = harbour.network().usualParameters();
        double perDay = usual[use.index()] * DAY;
        double dose = (perDay * harbour.volume() - FROM_LIMEWATER) / PER_BICARBONATE / DAY;
        Run run = run(harbour, harbour.settled(usual));
        run.set(harbour.levers().get("bicarbonate dose").setting(), dose);
        run.keepAccount().until(3 * DAY);
        assertThat(SettlingIn.used(harbour, run.account()) / harbour.volume() / 3)
                .isCloseTo(perDay, withinPercentage(2));
    }

    @Test
    void everyDrawUsesWhatItDrewOnTheDayItsWaterIsAsStated() {
        for (double[] draw : new Ensemble(harbour.network().parameters(), 20, 7).map(each -> each)) {
            double perDay = draw[use.index()] * DAY;
            Run run = run(harbour, harbour.settled(draw));
            run.keepAccount().until(DAY);
            assertThat(SettlingIn.used(harbour, run.account()) / harbour.volume())
                    .as("of %s a day", perDay)
                    .isCloseTo(perDay, withinPercentage(2));
        }
    }

    private static Parameter parameter(SystemTwin twin, String start) {
        return twin.network().parameters().stream()
                .filter(parameter -> parameter.name().startsWith(start))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"harbour-room", "fifty-five-gallon", "window-nano"})
    void theGroundIsAtRestWithWhatFallsOnIt(String example) {
        SystemTwin twin = SystemTwin.of(TestPlans.example(example));
        SystemTwin.Settled settled = twin.settled(twin.network().usualParameters());
        Body ground = twin.pools().ground();
        State state = settled.state();
        double carbon = state.get(ground, Stock.ORGANIC_CARBON);
        double nitrogen = state.get(ground, Stock.ORGANIC_NITROGEN);
        // Whole weeks, so that it is looked at just before a change again.
        run(twin, settled).until(56 * DAY);
        assertThat(state.get(ground, Stock.ORGANIC_CARBON)).isCloseTo(carbon, withinPercentage(10));
        assertThat(state.get(ground, Stock.ORGANIC_NITROGEN)).isCloseTo(nitrogen, withinPercentage(10));
    }

    @ParameterizedTest
    @ValueSource(strings = {"harbour-room", "fifty-five-gallon", "window-nano"})
    void whatIsFedComesBackAndDoesNotStayInWaste(String example) {
        SystemTwin twin = SystemTwin.of(TestPlans.example(example));
        SystemTwin.Settled settled = twin.settled(twin.network().usualParameters());
        State state = settled.state();
        double before = waste(twin, state);
        Run run = run(twin, settled);
        run.keepAccount().until(6 * DAY);
        Account account = run.account();
        double fed = -account.of(Balance.NITROGEN, List.of(twin.world().store())).stream()
                .filter(line ->
                        !line.cause().contains("change") && !line.cause().contains("top-off"))
                .mapToDouble(Account.Line::amount)
                .sum();
        assertThat(waste(twin, state) - before).isCloseTo(0, within(0.05 * fed));
    }

    @Test
    void rockBeginsWithThePhosphateOfItsOwnDraw() {
        SystemTwin twin = SystemTwin.of(TestPlans.example("window-nano"));
        Parameter ratio = parameter(twin, "phosphate on rock and sand, ratio");
        for (double[] draw : new Ensemble(twin.network().parameters(), 5, 3).map(each -> each)) {
            State state = twin.start(draw);
            assertThat(state.get(twin.pools().rockPhosphate(), Stock.PHOSPHATE)
                            / state.get(twin.display(), Stock.PHOSPHATE))
                    .isCloseTo(draw[ratio.index()], withinPercentage(1e-9));
        }
    }

    private static Run run(SystemTwin twin, SystemTwin.Settled settled) {
        return new Run(twin.network(), settled.parameters(), settled.state(), Accuracy.OF_A_YEAR);
    }

    /** Nitrogen afloat and on the ground. */
    private static double waste(SystemTwin twin, State state) {
        return state.get(twin.pools().ground(), Stock.ORGANIC_NITROGEN)
                + twin.waters().stream()
                        .mapToDouble(water -> state.get(water, Stock.ORGANIC_NITROGEN))
                        .sum();
    }
}
