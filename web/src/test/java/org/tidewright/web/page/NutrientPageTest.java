package org.tidewright.web.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.nutrient.Element;
import org.tidewright.husbandry.nutrient.Handles;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.desk.HandMadeDesk;
import org.tidewright.web.desk.SystemView;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The page of the first example, which feeds 0.188 g of nitrogen a day. */
class NutrientPageTest {
    private static final HandMadeDesk DESK = new HandMadeDesk();
    private static final SystemView HARBOUR = DESK.system("harbour-room").orElseThrow();

    private static NutrientForm form(Map<String, String> query) {
        return NutrientForm.read(query::get, Handles.of(HARBOUR.plan(), UnitSystem.METRIC), UnitSystem.METRIC);
    }

    private static NutrientPage page(Map<String, String> query) {
        return NutrientPage.of(DESK, HARBOUR, form(query), UnitSystem.METRIC);
    }

    private static NutrientPage.Flows flows(NutrientPage page) {
        NutrientPage.@Nullable Flows flows = page.flows();
        if (flows == null) {
            throw new AssertionError("no flows");
        }
        return flows;
    }

    @Test
    void anUntouchedFormMovesNothing() {
        assertThat(form(Map.of()).values()).isEmpty();
        assertThat(form(Map.of("feed_percent", "100", "refugium_lamp_hours_h", "12"))
                        .values())
                .isEmpty();
        assertThat(form(Map.of()).element()).isEqualTo(Element.NITROGEN);
    }

    @Test
    void whatIsMovedIsReadInItsUnit() {
        NutrientForm form = form(Map.of("phosphate_reactor_mass_g", "400", "show", "phosphorus"));
        assertThat(form.values()).isEqualTo(Map.of("phosphate_reactor_mass_g", 400.0));
        assertThat(form.element()).isEqualTo(Element.PHOSPHORUS);
    }

    @Test
    void whatNoSliderReachesIsRefusedWithTheReasonAndThePlanIsShown() {
        for (String typed : new String[] {"9999", "-5", "much", "NaN", "1e400"}) {
            NutrientForm form = form(Map.of("feed_percent", typed));
            assertThat(form.values()).as(typed).isEmpty();
            assertThat(form.fields().get(0).fault()).as(typed).isEqualTo("from 0 to 200 %; shown for 100");
        }
    }

    @Test
    void thePlansOwnValueIsAStepOfEverySlider() {
        for (NutrientForm.Field field : form(Map.of()).fields()) {
            double steps = Double.parseDouble(field.planned()) / Double.parseDouble(field.step());
            assertThat(steps).as(field.key()).isCloseTo(Math.rint(steps), within(1e-6));
        }
    }

    @Test
    void theTableTellsEveryFlowAndTheirSum() {
        NutrientPage.Flows flows = flows(page(Map.of()));
        // 2 x 0.5 g of pellets at 7.7 %, 2 x 2 g of mysids at 1.85 %, 0.2 g of seaweed at 5.5 %, 6.4 L of new water.
        assertThat(flows.sum().asRun()).isEqualTo("0.162");
        assertThat(flows.lines())
                .extracting(NutrientPage.FlowLine::from, NutrientPage.FlowLine::to)
                .contains(
                        org.assertj.core.groups.Tuple.tuple("pellets", "fish"),
                        org.assertj.core.groups.Tuple.tuple("fish", "water"),
                        org.assertj.core.groups.Tuple.tuple("water", "skimmer"),
                        org.assertj.core.groups.Tuple.tuple("water", "weekly change"));
        assertThat(flows.sum().changed()).isEmpty();
        // Fed half, fish would give of their own flesh besides.
        assertThat(flows(page(Map.of("feed_percent", "200"))).sum().changed()).isEqualTo("0.324");
    }

    @Test
    void thePictureHoldsTheTablesFlowsAndNoNodeTwice() {
        JsonNode json = new ObjectMapper().readTree(flows(page(Map.of())).json().html());
        double food = 0;
        for (JsonNode flow : json.get("flows")) {
            assertThat(flow.get("g_per_d").asDouble()).isPositive();
            food += flow.get("from").asString().startsWith("in ")
                    ? flow.get("g_per_d").asDouble()
                    : 0;
        }
        assertThat(food).isBetween(0.160, 0.164);
        assertThat(json.get("nodes").findValuesAsString("id"))
                .doesNotHaveDuplicates()
                .contains("water", "fish");
    }

    @Test
    void everyEndHasItsBandAndItsSource() {
        NutrientPage page = page(Map.of());
        assertThat(page.ends()).extracting(NutrientPage.End::name).first().isEqualTo("Nitrate");
        assertThat(page.ends().get(0).start()).isEqualTo("8.0");
        assertThat(page.ends().get(0).band()).isEqualTo("1–12");
        for (NutrientPage.End end : page.ends()) {
            assertThat(page.sources())
                    .as(end.name())
                    .anyMatch(source -> source.key().equals(end.bandSource()));
        }
    }

    @Test
    void withoutAChangeNothingIsCalledChanged() {
        assertThat(page(Map.of()).changed()).isFalse();
        assertThat(page(Map.of("feed_percent", "60")).changed()).isTrue();
        assertThat(page(Map.of("feed_percent", "60")).ends().get(0).difference())
                .startsWith("\u2212");
    }
}
