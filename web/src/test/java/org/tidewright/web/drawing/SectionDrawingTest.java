package org.tidewright.web.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import org.jspecify.annotations.NullUnmarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;
import org.tidewright.twin.rehearsal.OutageOrder;
import org.tidewright.twin.rehearsal.Outdoors;
import org.tidewright.twin.rehearsal.WaterMovement;
import org.tidewright.web.desk.HandMadeDesk;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

@NullUnmarked // A plan without what is read here fails the test.
class SectionDrawingTest {
    static final List<String> EXAMPLES = Examples.NAMES;

    private final HandMadeDesk desk = new HandMadeDesk();

    private static Plan plan(String text) {
        return ((PlanReading.Sound) PlanText.read(text)).plan();
    }

    private Document drawn(Plan plan, WaterMovement water, int sample) {
        return Xml.parse(SectionDrawing.of(plan, water, sample, plan.units(), plan.name())
                .svg());
    }

    private Document drawn(String example) {
        Plan plan = plan(Examples.text(example));
        return drawn(plan, desk.running(plan), 0);
    }

    private static List<Area> panes(Document drawing) {
        return Xml.with(drawing, "rect", "class", "glass").stream()
                .map(Xml::area)
                .toList();
    }

    @ParameterizedTest
    @FieldSource("EXAMPLES")
    void isWellFormedAndHasNoStyleOfItsOwn(String example) {
        Plan plan = plan(Examples.text(example));
        String svg = SectionDrawing.of(plan, desk.running(plan), 0, plan.units(), "label")
                .svg();
        Xml.parse(svg);
        assertThat(svg).doesNotContain("style=");
    }

    /** The numbers are the plan's: length 150, height 55, standing at 88, crest 48.5, box 24 long; panes 12 and 15 mm. */
    @Test
    void drawsTheDisplayOfTheHarbourRoomAtThePlansNumbers() {
        assertThat(panes(drawn("harbour-room")))
                .contains(
                        new Area(-12, 880, 12, 550),
                        new Area(1500, 880, 12, 550),
                        new Area(-12, 865, 1524, 15),
                        new Area(1260, 880, 6, 485));
    }

    /** Sections of 24, 40 and 26 cm with baffles of 6 mm between: 912 mm in all, 40 cm high from 4 cm above the floor. */
    @Test
    void drawsTheSumpOfTheHarbourRoomAtItsLengthAndHeights() {
        Plan plan = plan(Examples.text("harbour-room"));
        SectionLayout.SumpPlace sump = SectionLayout.of(plan).sump();
        assertThat(sump).isNotNull();
        Area inside = sump.tank().inside();
        double height = plan.sump().height().in("m") * 1000;
        assertThat(inside.width()).isCloseTo(912, offset(1e-9));
        assertThat(inside.bottom()).isEqualTo(40);
        assertThat(inside.height()).isEqualTo(height);
        assertThat(sump.section("inlet").inside().width()).isCloseTo(240, offset(1e-9));
        assertThat(sump.section("inlet").inside().right()).isEqualTo(inside.right());
        assertThat(sump.section("return section").inside().left()).isCloseTo(inside.left(), offset(1e-9));
        double first = inside.right() - 240 - 6;
        assertThat(panes(drawn("harbour-room"))).anySatisfy(pane -> {
            assertThat(pane.left()).isCloseTo(first, offset(0.06));
            assertThat(pane.width()).isEqualTo(6);
            assertThat(pane.bottom()).isCloseTo(40, offset(1e-9));
            assertThat(pane.height())
                    .isCloseTo(plan.sump().sections().get(0).baffle().over().in("m") * 1000, offset(0.06));
        });
    }

    /** 47.5 by 20 in standing at 30 in: 1206.5 by 508 mm at 762 mm; the box's crest 18.5 in, 469.9 mm, over its bottom. */
    @Test
    void drawsInchesAtTheirLength() {
        Plan plan = plan(Examples.text("fifty-five-gallon"));
        SectionLayout layout = SectionLayout.of(plan);
        assertThat(layout.display().inside().width()).isCloseTo(1206.5, offset(1e-9));
        assertThat(layout.display().inside().height()).isCloseTo(508, offset(1e-9));
        assertThat(layout.display().inside().bottom()).isCloseTo(762, offset(1e-9));
        assertThat(layout.box().inside().top()).isCloseTo(762 + 469.9, offset(1e-9));
        assertThat(layout.box().outer().left())
                .isGreaterThan(layout.display().outside().right());
    }

    @ParameterizedTest
    @FieldSource("EXAMPLES")
    void drawsEachSurfaceAtTheRunsLevel(String example) {
        Plan plan = plan(Examples.text(example));
        WaterMovement water = plan.hasSump()
                ? desk.waterAfter(plan, new OutageOrder(24, Outdoors.constant(5), false, false))
                        .movement()
                : desk.running(plan);
        int sample = water.time().length / 3;
        Document drawing = drawn(plan, water, sample);
        for (WaterMovement.Vessel vessel : water.vessels()) {
            String key = WaterKeys.of(vessel, plan);
            if (Double.isNaN(vessel.level()[sample]) || key.equals(WaterKeys.RESERVOIR)) {
                continue;
            }
            assertThat(Xml.with(drawing, "rect", "data-water", key))
                    .as(key)
                    .isNotEmpty()
                    .allSatisfy(rectangle -> {
                        double floor = Double.parseDouble(rectangle.getAttribute("data-floor"));
                        Area tint = Xml.area(rectangle);
                        assertThat(tint.bottom()).isCloseTo(floor, offset(0.11));
                        assertThat(tint.height()).isCloseTo(1000 * vessel.level()[sample], offset(0.051));
                    });
        }
    }

    @Test
    void rockReachesTheHeightThePlanGives() {
        Document drawing = drawn("harbour-room");
        double highest = Xml.with(drawing, "path", "class", "rock").stream()
                .mapToDouble(SectionDrawingTest::top)
                .max()
                .orElseThrow();
        assertThat(highest).isCloseTo(880 + 380, offset(1.0));
    }

    /** The highest point of an outline of quadratic curves, found by walking them in small steps. */
    private static double top(Element path) {
        String[] tokens =
                path.getAttribute("d").replaceAll("([A-Z])", " $1 ").trim().split("[\\s,]+", -1);
        double highest = Double.NEGATIVE_INFINITY;
        double y = 0;
        for (int i = 0; i < tokens.length; i++) {
            switch (tokens[i]) {
                case "M", "L" -> {
                    y = -Double.parseDouble(tokens[i + 2]);
                    highest = Math.max(highest, y);
                }
                case "Q" -> {
                    double control = -Double.parseDouble(tokens[i + 2]);
                    double end = -Double.parseDouble(tokens[i + 4]);
                    for (double t = 0; t <= 1; t += 0.01) {
                        double a = y + t * (control - y);
                        double b = control + t * (end - control);
                        highest = Math.max(highest, a + t * (b - a));
                    }
                    y = end;
                }
                default -> {}
            }
        }
        return highest;
    }

    @Test
    void theSameNameGivesTheSameRockAndAnotherNameAnother() {
        String text = Examples.text("window-nano");
        Plan plan = plan(text);
        Plan renamed = plan(text.replace("name: Window nano", "name: Window nano two"));
        String once = SectionDrawing.of(plan, desk.running(plan), 0, UnitSystem.METRIC, "x")
                .svg();
        assertThat(SectionDrawing.of(plan, desk.running(plan), 0, UnitSystem.METRIC, "x")
                        .svg())
                .isEqualTo(once);
        assertThat(SectionDrawing.of(renamed, desk.running(renamed), 0, UnitSystem.METRIC, "x")
                        .svg())
                .isNotEqualTo(once);
    }

    @Test
    void namesOfThePlanAreEscaped() {
        String text = Examples.text("harbour-room")
                .replace("name: refugium\n", "name: \"<script>alert('a & b')</script>\"\n")
                .replace("over: refugium", "over: \"<script>alert('a & b')</script>\"");
        Plan plan = plan(text);
        String svg = SectionDrawing.of(plan, desk.running(plan), 0, plan.units(), "<b>\"quoted\"")
                .svg();
        Document drawing = Xml.parse(svg);
        assertThat(svg).doesNotContain("<script");
        assertThat(drawing.getDocumentElement().getAttribute("aria-label")).isEqualTo("<b>\"quoted\"");
        assertThat(drawing.getDocumentElement().getTextContent()).contains("<script>alert('a & b')</script>");
    }

    @Test
    void waterOnTheFloorIsToldAndTheRimIsMarkedAsCrossed() {
        Plan plan = plan(Examples.text("harbour-room"));
        WaterMovement water = withSevenLitresOnTheFloor(
                desk.waterAfter(plan, desk.usualOrder(plan)).movement());
        int last = water.time().length - 1;
        assertThat(Xml.with(drawn(plan, water, last), "path", "class", "limit crossed"))
                .hasSize(1);
        assertThat(Xml.with(drawn(plan, water, 0), "path", "class", "limit crossed"))
                .isEmpty();
        assertThat(Xml.with(drawn(plan, water, last), "rect", "class", "puddle"))
                .hasSize(1);
        assertThat(Xml.with(drawn(plan, water, 0), "rect", "class", "puddle off"))
                .hasSize(1);
    }

    private static WaterMovement withSevenLitresOnTheFloor(WaterMovement water) {
        double[] volume = new double[water.time().length];
        volume[volume.length - 1] = 7e-3;
        List<WaterMovement.Vessel> vessels = water.vessels().stream()
                .map(vessel -> vessel.name().equals("floor")
                        ? new WaterMovement.Vessel("floor", vessel.place(), vessel.level(), volume)
                        : vessel)
                .toList();
        return new WaterMovement(water.time(), vessels, water.streams());
    }
}
