package org.tidewright.web.page;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.OffsetDateTime;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.desk.HandMadeDesk;
import org.tidewright.web.desk.SystemView;

class CoralsPageTest {
    private static final HandMadeDesk DESK = new HandMadeDesk();

    private static CoralsPage page(String system, UnitSystem units, String... typed) {
        Map<String, String> query = new HashMap<>();
        for (int i = 0; i < typed.length; i += 2) {
            query.put(typed[i], typed[i + 1]);
        }
        SystemView view = DESK.system(system).orElseThrow();
        return CoralsPage.of(
                query::get,
                view,
                DESK.water(view),
                DESK.journal().lines(system, Span.EVER, EnumSet.of(Kind.ANIMAL)),
                DESK.species().catalogue(),
                units);
    }

    private static CoralsPage harbour(String... typed) {
        return page("harbour-room", UnitSystem.METRIC, typed);
    }

    private static String text(Markup markup) {
        return markup.html()
                .replaceAll("<a class=\"src\".*?</a>", "")
                .replaceAll("<span class=\"u\">", " ")
                .replaceAll("<[^>]*>", "")
                .replace('\u00a0', ' ');
    }

    private static AmountField field(CoralsPage page, String name) {
        return page.form().parts().stream()
                .flatMap(part -> part.fields().stream())
                .filter(field -> field.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void opensWithWhatToMoveAndWhatToMind() {
        CoralsPage page = harbour();
        assertThat(text(page.lead())).startsWith("Move the ").contains("reaches 20 cm beyond its edge");
        assertThat(page.cautions()).anyMatch(caution -> caution.contains("gloves"));
        assertThat(page.trial()).isNull();
        assertThat(page.refused()).isFalse();
        assertThat(page.cutting())
                .anyMatch(caution -> caution.contains("eye protection"))
                .anyMatch(caution -> caution.contains("palytoxin"));
    }

    @Test
    void everyCoralHasItsRowAndThoseWithoutAPlaceSaySo() {
        CoralsPage page = harbour();
        assertThat(page.rows()).hasSize(9).extracting(CoralRow::number).startsWith(1, 2, 3);
        assertThat(page.rows().get(8).verdict()).isEqualTo("not told");
        assertThat(text(page.rows().get(8).neighbours())).isEqualTo("The plan has no place for them.");
        assertThat(page.rows())
                .filteredOn(row -> row.verdict().equals("move it"))
                .hasSize(2);
    }

    @Test
    void lettersOnThePageLeadToItsSources() {
        CoralsPage page =
                harbour("coral", "pocillopora", "across", "6 cm", "x", "30 cm", "y", "20 cm", "height", "20 cm");
        String html = page.lead().html()
                + requireNonNull(page.trial()).lead().html()
                + page.growing().html()
                + page.rows().get(0).neighbours().html();
        assertThat(page.sources())
                .extracting(Source::key)
                .containsAll(Pattern.compile("#source-(\\w+)")
                        .matcher(html)
                        .results()
                        .map(found -> found.group(1))
                        .toList());
    }

    @Test
    void aPlaceIsTriedInTheUnitsThatAreTyped() {
        CoralsPage metric = harbour("coral", "euphyllia", "across", "8", "x", "25", "y", "34", "height", "12");
        assertThat(text(requireNonNull(metric.trial()).lead()))
                .startsWith("Do not put it there: the new torch, hammer");
        CoralsPage inches = harbour(
                "coral", "euphyllia", "across", "3.15 in", "x", "9.84 in", "y", "13.39 in", "height", "4.72 in");
        assertThat(text(requireNonNull(inches.trial()).lead()))
                .isEqualTo(text(metric.trial().lead()));
        assertThat(metric.trial().working()).hasSize(3);
        assertThat(metric.trial().cautions()).isNotEmpty();
    }

    @Test
    void withoutAPlaceItTellsWhereACoralCouldStandAndEachIsTriedByALink() {
        CoralsPage page = harbour("coral", "plating_montipora", "across", "8 cm");
        CoralsPage.Trial trial = requireNonNull(page.trial());
        assertThat(text(trial.lead())).startsWith("Look whether rock or sand is there");
        assertThat(trial.suggestions()).hasSize(3);
        assertThat(trial.suggestions().get(0).href())
                .startsWith("/systems/harbour-room/corals?coral=plating_montipora&across=8+cm&x=")
                .endsWith("#try");
    }

    @Test
    void oneOfYoursIsThoughtAwayFromItsOwnPlace() {
        CoralsPage page = harbour("coral", "own-6", "x", "18 cm", "y", "44 cm", "height", "8 cm");
        assertThat(field(page, "across").note()).isEqualTo("from the plan");
        String neighbours = text(requireNonNull(page.trial()).working().get(2));
        assertThat(neighbours).startsWith("Neighbours: ").doesNotContain("torch");
    }

    @Test
    void whatIsWrongIsSaidBesideItsFieldAndNothingIsTried() {
        CoralsPage page =
                harbour("coral", "euphyllia", "across", "8 cm", "x", "200 cm", "y", "near", "height", "10 cm");
        assertThat(page.refused()).isTrue();
        assertThat(page.trial()).isNull();
        assertThat(field(page, "x").fault().replace('\u00a0', ' '))
                .startsWith("Found 200")
                .contains("150 cm");
        assertThat(field(page, "y").fault()).startsWith("Found “near”; expected a number in cm");
        assertThat(field(page, "y").text()).isEqualTo("near");
    }

    @Test
    void halfAPlaceIsNone() {
        CoralsPage page = harbour("coral", "euphyllia", "across", "8 cm", "x", "20 cm");
        assertThat(page.refused()).isTrue();
        assertThat(field(page, "y").fault()).startsWith("Found nothing; expected a length, or none of the three");
        assertThat(field(page, "x").fault()).isEmpty();
    }

    @Test
    void aNewCoralNeedsItsWidthAndAPlaceNeedsItsCoral() {
        assertThat(field(harbour("coral", "euphyllia"), "across").fault())
                .startsWith("Found nothing; expected how wide");
        CoralsPage nameless = harbour("x", "20 cm", "y", "20 cm", "height", "10 cm");
        assertThat(nameless.refused()).isTrue();
        assertThat(nameless.form().parts().get(0).selects().get(0).fault()).startsWith("Choose which coral");
        assertThat(harbour("coral", "triffid")
                        .form()
                        .parts()
                        .get(0)
                        .selects()
                        .get(0)
                        .fault())
                .isEqualTo("“triffid” is none of the list.");
    }

    @Test
    void theDemandIsToldWithTheDosesThatBringIt() {
        CoralsPage page = harbour();
        assertThat(text(page.growing())).startsWith("Be ready to dose ");
        assertThat(page.doses()).containsExactly("bicarbonate", "calcium");
        assertThat(page.demand()).hasSize(6);
        assertThat(text(page.demand().get(0).doses().get(0))).isEqualTo("100 mL/d");
        assertThat(text(page.demand().get(0).alkalinity())).startsWith("1.0 dKH/d");
    }

    /** The log of the fifty-five gallons tells its use; its plan has one stony coral without a place. */
    @Test
    void aPlanInUsUnitsIsToldInInches() {
        CoralsPage page = page("fifty-five-gallon", UnitSystem.US);
        assertThat(text(page.lead())).startsWith("Say where your corals stand");
        assertThat(page.rows().get(0).facts().replace('\u00a0', ' ')).contains(" in wide");
        assertThat(page.caption().replace('\u00a0', ' ')).contains(" in over the bottom");
    }

    @Test
    void piecesThatLeftAreListedFromTheLog() {
        HandMadeDesk desk = DESK;
        desk.journal()
                .write(
                        "window-nano",
                        new Draft(
                                UUID.nameUUIDFromBytes(new byte[] {7}),
                                OffsetDateTime.now(desk.clock()).minusDays(3),
                                new Event.AnimalMoved("hammer coral heads", 2, Event.Move.LEFT, 0.04),
                                "to the club"));
        assertThat(page("window-nano", UnitSystem.METRIC).cuttings())
                .isEqualTo(List.of(
                        new CoralsPage.Piece("4 March 2026", "2 hammer coral heads of 4\u00a0cm", "to the club")));
    }
}
