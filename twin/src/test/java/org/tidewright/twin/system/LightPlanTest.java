package org.tidewright.twin.system;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.tidewright.plan.Examples;
import org.tidewright.testkit.ChangedText;
import org.tidewright.twin.TestPlans;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

class LightPlanTest {
    /** 10 W of 1.9 µmol/J, six tenths of which reach the algae, over 14 by 12 inches: 105.2 µmol/m²/s. */
    @Test
    void aLampOverASectionOfTheSumpShinesOnThatSectionAlone() {
        double par = 10 * 1.9 * 0.6 / (14 * 0.0254 * 12 * 0.0254);
        assertThat(par).isCloseTo(105.2, withinPercentage(0.1));
        assertThat(grown(", par: " + par + " µmol/m²/s")).isCloseTo(grown(""), withinPercentage(1e-6));
        assertThat(grown(", par: 50 µmol/m²/s")).isLessThan(0.95 * grown(""));
    }

    /** Algae after ten days, of a bed whose growth its harvests do not tell. */
    private static double grown(String par) {
        SystemTwin twin = SystemTwin.of(TestPlans.read(ChangedText.of(
                Examples.text("fifty-five-gallon"),
                ", harvested_every: 14 d, left_standing: 3 oz",
                "",
                "daily: 12 h, starts: \"20:00\"",
                "daily: 12 h, starts: \"20:00\"" + par)));
        double[] usual = twin.network().usualParameters();
        State state = twin.start(usual);
        new Run(twin.network(), usual, state, Accuracy.OF_A_YEAR).until(10 * 86_400);
        return state.get(twin.network().body("algae in the return section"), Stock.ORGANIC_NITROGEN);
    }
}
