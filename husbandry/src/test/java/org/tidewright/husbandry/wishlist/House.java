package org.tidewright.husbandry.wishlist;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.burden.CalmAddition;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.livestock.Homes;
import org.tidewright.husbandry.quarantine.BareTankWater;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.species.Catalogue;

/** The example display of 70 days with its quarantine tank on 7 March 2026, and logs written by the tests. */
final class House {
    static final LocalDate TODAY = LocalDate.parse("2026-03-07");
    static final Plan DISPLAY = TestPlans.example("harbour-room");
    static final Plan BOX = TestPlans.example("quarantine-box");
    static final BareTankWater WATER = BareTankWater.of(BOX);
    static final String BOX_NAME = "Quarantine box";

    private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
    private static final double AGE = 2.3;

    private final List<Line> display = new ArrayList<>();
    private final List<Line> box = new ArrayList<>();
    private boolean hasBox = true;
    private LocalDate today = TODAY;
    private @Nullable CalmAddition calm = new CalmAddition(0.05, 0.18, 13);

    House on(String day) {
        today = LocalDate.parse(day);
        return this;
    }

    House withoutBox() {
        hasBox = false;
        return this;
    }

    House calm(double mass) {
        calm = new CalmAddition(mass, 0.18, 13);
        return this;
    }

    House inDisplay(String day, Event event) {
        display.add(line(day, event, display.size()));
        return this;
    }

    House inBox(String day, Event event) {
        box.add(line(day, event, box.size()));
        return this;
    }

    static Event moved(int count, String animal, Event.Move move) {
        return new Event.AnimalMoved(animal, count, move, null);
    }

    private static Line line(String day, Event event, int number) {
        return new Line(
                new UUID(0, number + 1L),
                1,
                LocalDate.parse(day)
                        .atTime(LocalTime.of(12, 0).plusSeconds(number))
                        .atZone(ZONE)
                        .toOffsetDateTime(),
                event,
                "",
                false,
                Instant.EPOCH);
    }

    Household household() {
        return new Household(
                DISPLAY,
                Catalogue.ofProgram(),
                Homes.of(DISPLAY, AGE, 0.1),
                display,
                hasBox ? List.of(new Household.Box(BOX_NAME, BOX, box, WATER)) : List.of(),
                calm,
                today,
                ZONE);
    }

    ArrivalAnswer plan(WishList list) {
        return ArrivalAnswer.of(list, household());
    }

    ArrivalAnswer plan(String... lines) {
        return plan(list(lines));
    }

    static WishList list(String... lines) {
        WishText.Reading reading = WishText.read(String.join("\n", lines), Catalogue.ofProgram());
        if (!reading.faults().isEmpty()) {
            throw new AssertionError(reading.faults());
        }
        return new WishList(reading.lines(), null, null);
    }

    /** A plan's own days, kept. */
    static WishList kept(ArrivalAnswer answer) {
        return answer.study().list().keeping(answer.study().days());
    }

    static ArrivalAnswer.Coming coming(ArrivalAnswer answer, String common) {
        return answer.coming().stream()
                .filter(each -> each.animals().species().name().is(common))
                .findFirst()
                .orElseThrow(() -> new AssertionError(common + " has no day"));
    }

    static String why(ArrivalAnswer.Coming coming) {
        return String.join(
                " ",
                coming.why().stream()
                        .map(sentence -> sentence.text(UnitSystem.METRIC))
                        .toList());
    }

    static String lead(ArrivalAnswer answer) {
        return answer.advice().lead().text(UnitSystem.METRIC);
    }
}
