package org.tidewright.web.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.tidewright.husbandry.reef.Colony;
import org.tidewright.husbandry.reef.CoralLore;
import org.tidewright.husbandry.reef.FormTraits;
import org.tidewright.husbandry.reef.Growth;
import org.tidewright.husbandry.reef.Place;
import org.tidewright.husbandry.reef.ReefSite;
import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.species.CoralForm;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class ReefDrawingTest {
    static final List<String> EXAMPLES = Examples.NAMES;

    private static ReefSite site(String example) {
        PlanReading reading = PlanText.read(Examples.text(example));
        return new ReefSite(((PlanReading.Sound) reading).plan(), CoralLore.BY_FORM);
    }

    private static Growth growth(Plan plan) {
        return Growth.asStated(plan, CoralLore.BY_FORM, 0.495);
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    @ParameterizedTest
    @FieldSource("EXAMPLES")
    void bothSidesAreWellFormedAndHaveNoStyleOfTheirOwn(String example) {
        ReefSite site = site(example);
        Growth growth = growth(site.plan());
        for (UnitSystem units : UnitSystem.values()) {
            String front = ReefDrawing.front(site, growth, null, units, "label").svg();
            String above =
                    ReefDrawing.above(site, growth, null, units, 0.2, "label").svg();
            Xml.parse(front);
            Xml.parse(above);
            assertThat(front + above).doesNotContain("style=");
        }
    }

    /** The cauliflower coral of 250 cm² stands 80 cm from the left, 10 from the front and 24 up: a radius of 89.2 mm. */
    @Test
    void aColonyIsADiscAtThePlansPlace() {
        ReefSite site = site("harbour-room");
        Growth growth = growth(site.plan());
        Document above = Xml.parse(ReefDrawing.above(site, growth, null, UnitSystem.METRIC, 0.2, "label")
                .svg());
        Document front = Xml.parse(ReefDrawing.front(site, growth, null, UnitSystem.METRIC, "label")
                .svg());
        assertThat(Xml.with(above, "ellipse", "class", "colony")).hasSize(8).anySatisfy(disc -> {
            assertThat(number(disc, "cx")).isCloseTo(800, within(0.05));
            assertThat(number(disc, "cy")).isCloseTo(-100, within(0.05));
            assertThat(number(disc, "rx")).isCloseTo(89.2, within(0.05));
            assertThat(number(disc, "ry")).isEqualTo(number(disc, "rx"));
        });
        assertThat(Xml.with(front, "ellipse", "class", "colony")).hasSize(8).anySatisfy(disc -> {
            assertThat(number(disc, "cx")).isCloseTo(800, within(0.05));
            assertThat(number(disc, "cy")).isCloseTo(-240, within(0.05));
        });
        assertThat(Xml.with(above, "ellipse", "class", "colony-later")).hasSize(8);
    }

    /** Torch and hammer, 18.2 and 16 cm wide, reach 20 cm beyond their edges and stand 9 cm apart. */
    @Test
    void aRingShowsHowFarOneStingsThatReachesANeighbour() {
        ReefSite site = site("harbour-room");
        Document above = Xml.parse(ReefDrawing.above(site, growth(site.plan()), null, UnitSystem.METRIC, 0.2, "label")
                .svg());
        assertThat(Xml.with(above, "circle", "class", "reach"))
                .extracting(ring -> number(ring, "r"))
                .satisfiesExactlyInAnyOrder(
                        torch -> assertThat(torch).isCloseTo(89.2 + 200, within(0.1)),
                        hammer -> assertThat(hammer).isCloseTo(79.8 + 200, within(0.1)));
    }

    @Test
    void aPlaceThatIsTriedIsMarked() {
        ReefSite site = site("window-nano");
        Colony tried = new Colony("new one", 1, 0.02, FormTraits.of(CoralForm.EUPHYLLIA), new Place(0.1, 0.1, 0.1));
        Document front = Xml.parse(ReefDrawing.front(site, growth(site.plan()), tried, UnitSystem.METRIC, "label")
                .svg());
        assertThat(Xml.with(front, "ellipse", "class", "colony tried")).hasSize(1);
    }
}
