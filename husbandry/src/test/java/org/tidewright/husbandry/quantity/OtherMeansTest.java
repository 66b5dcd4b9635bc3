package org.tidewright.husbandry.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.dosing.DoseAdvice;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.note.NoteWords;
import org.tidewright.husbandry.water.SystemWater;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;

/** Systems that are not dosed by a pump from a bottle: a reactor, limewater alone, or nothing. */
class OtherMeansTest {
    private static final OffsetDateTime FIRST = OffsetDateTime.parse("2026-01-05T08:00:00+01:00");
    private static final double DEGREE = WaterQuantity.ALKALINITY.units().get(0).toHeld(1);

    private static final String LIMEWATER = """
              - name: limewater
                salt: calcium_hydroxide
                saturation: 90 %
                per_day: 2 L/d
                into: return section
                from: "22:00" # at night, when the pH is low
                daily: 9 h
                container: 10 L
            """;
    private static final String REACTOR = """
              - name: calcium reactor
                stands_in: skimmer section
                reactor: {effluent: 30 mL/min, chamber_ph: 6.5, media_mass: 4 kg}
              - name: phosphate reactor
            """;
    private static final String[] NO_PAIR = {
        "salt: sodium_bicarbonate", "salt: potassium_chloride", "salt: calcium_chloride", "salt: potassium_chloride"
    };

    /** The example with neither of the two parts, and with other pieces exchanged. */
    private static Plan plan(String... more) {
        List<String> pieces = new ArrayList<>(List.of(NO_PAIR));
        pieces.addAll(List.of(more));
        return TestPlans.example("harbour-room", pieces.toArray(String[]::new));
    }

    private static QuantityStudy study(Plan plan, double from, double perDay) {
        return study(plan, WaterQuantity.ALKALINITY, "endpoint_titration", from, perDay);
    }

    private static QuantityStudy study(Plan plan, WaterQuantity quantity, String method, double from, double perDay) {
        List<Line> lines = new ArrayList<>();
        for (int day = 0; day <= 56; day += 4) {
            OffsetDateTime at = FIRST.plusDays(day);
            double shown = Math.round((from + perDay * day) * 20) / 20.0;
            Event reading = new Event.Reading(quantity, shown, quantity.units().get(0), method);
            lines.add(new Line(UUID.randomUUID(), 1, at, reading, "", false, at.toInstant()));
        }
        return WaterStudy.of(plan, lines, FIRST.plusDays(56).plusHours(5).toInstant(), ZoneId.of("Europe/Berlin"))
                .of(quantity)
                .orElseThrow();
    }

    private static String lead(QuantityStudy study) {
        return study.advice().lead().text(UnitSystem.METRIC).replace('\u00a0', ' ');
    }

    private static double grams(String words) {
        Matcher found = Pattern.compile("([\\d.]+) g of sodium bicarbonate").matcher(words);
        assertThat(found.find()).as(words).isTrue();
        return Double.parseDouble(found.group(1));
    }

    @Test
    void aReactorIsMovedByItsEffluent() {
        Plan plan = plan(LIMEWATER, "", "  - name: phosphate reactor\n", REACTOR);
        QuantityStudy study = study(plan, 9.1, -0.025);
        assertThat(study.decision()).isInstanceOf(DoseAdvice.Move.class);
        assertThat(lead(study))
                .matches("Raise the effluent of calcium reactor from 30 mL/min to 3\\d[.\\d]* mL/min, and then.*");
        assertThat(NoteWords.of(Objects.requireNonNull(study.move()), UnitSystem.METRIC))
                .startsWith("set calcium reactor effluent ");
        assertThat(study.advice().cautions())
                .anySatisfy(caution -> assertThat(caution).contains("carbon dioxide"));
    }

    /** Its effluent follows alkalinity. A kilogram of calcium is 147.01 / 40.078 kg of CaCl2 2H2O. */
    @Test
    void aReactorIsNotMovedForCalciumWhichIsLiftedByTheGram() {
        Plan plan = plan(LIMEWATER, "", "  - name: phosphate reactor\n", REACTOR);
        QuantityStudy study = study(plan, WaterQuantity.CALCIUM, "titration", 370, 0);
        assertThat(study.decision()).isNull();
        Matcher told = Pattern.compile("Bring calcium up: ([\\d.]+) g of calcium chloride.* for (\\d+) days\\..*")
                .matcher(lead(study));
        assertThat(told.matches()).as(lead(study)).isTrue();
        double aim = Objects.requireNonNull(study.range()).aim(plan);
        double all = (aim - study.now().value()) * SystemWater.volume(plan) * 1000 * 147.01 / 40.078;
        double days = Double.parseDouble(told.group(2));
        assertThat(Double.parseDouble(told.group(1)) * days).isCloseTo(all, within(0.05 * days + 1e-6));
        assertThat(study.advice().cautions())
                .anySatisfy(caution -> assertThat(caution).contains("heats the water"));
    }

    @Test
    void aLowLevelBesideAReactorIsLiftedByTheGram() {
        Plan plan = plan(LIMEWATER, "", "  - name: phosphate reactor\n", REACTOR);
        QuantityStudy study = study(plan, 6.6, 0);
        assertThat(study.decision()).isInstanceOfSatisfying(DoseAdvice.Correct.class, correct -> {
            // NaHCO3 (84.007 g/mol) brings one mole of alkalinity a mole; 1 dKH = 0.3566 mol/m³.
            double each = correct.lift() / correct.days() * SystemWater.volume(plan) * 84.007;
            assertThat(grams(lead(study))).isCloseTo(each, within(0.06));
        });
    }

    @Test
    void limewaterAloneIsMovedInLitres() {
        QuantityStudy study = study(plan(), 9.1, -0.025);
        assertThat(study.decision()).isInstanceOf(DoseAdvice.Move.class);
        assertThat(lead(study)).matches("Raise limewater from 2 L/d to 2\\.[\\d]+ L/d, and then.*");
    }

    @Test
    void noMoreLimewaterIsAdvisedThanEvaporates() {
        Plan full = plan("per_day: 2 L/d", "per_day: " + litresEvaporated() + " L/d");
        QuantityStudy study = study(full, 8.9, -0.02);
        assertThat(study.decision()).isInstanceOf(DoseAdvice.Leave.class);
        assertThat(lead(study))
                .startsWith("Dose no more of limewater than now, ")
                .contains("more than evaporates");
        assertThat(study.advice().remarks())
                .anySatisfy(remark -> assertThat(remark.text(UnitSystem.METRIC)).contains("g of sodium bicarbonate"));
    }

    private static double litresEvaporated() {
        return Math.floor(SystemWater.evaporation(plan()) * 86_400 * 1000 * 100) / 100;
    }

    @Test
    void withoutAnyMeansALowLevelIsLiftedByTheGramAndToldWhatHoldsIt() {
        Plan plan = plan(LIMEWATER, "");
        QuantityStudy study = study(plan, 8.3, -0.03);
        assertThat(study.decision()).isNull();
        assertThat(lead(study)).startsWith("Bring alkalinity up: ");
        // 8.0 less 6.6 dKH over five days of 0.28 dKH: 0.1 mol/m³ in 0.51 m³, 84 g/mol.
        double each = 1.4 / 5 * DEGREE * SystemWater.volume(plan) * 84.007;
        assertThat(grams(lead(study))).isCloseTo(each, within(0.15 * each));
        // It falls by 0.03 dKH a day, and the changes of 9 % a week bring (8.2 - 7.4) dKH on average: at 8.0 dKH nearly
        // 0.04.
        double holds = 0.038 * DEGREE * SystemWater.volume(plan) * 84.007;
        assertThat(study.advice().remarks()).anySatisfy(remark -> {
            Matcher held = Pattern.compile("or ([\\d.]+).g of the salt a day").matcher(remark.text(UnitSystem.METRIC));
            assertThat(held.find()).isTrue();
            assertThat(Double.parseDouble(held.group(1))).isCloseTo(holds, within(0.25 * holds));
        });
    }
}
