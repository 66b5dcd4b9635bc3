package org.tidewright.plan.rule;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidewright.plan.model.Inhabitants.Coral;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;

class SpotRulesTest {
    private static final String PLAN = """
            tidewright_plan: 1
            name: Small reef
            units: metric
            water: {salinity: 35, temperature: 25.5 °C}
            room: {temperature: 21 °C, humidity: 50 %, floor_area: 16 m², construction: medium}
            display:
              length: 60 cm
              width: 40 cm
              height: 36 cm
              bottom_height: 80 cm
              glass: {panes: 8 mm, bottom: 8 mm, top_edge: free}
              cover: open
              water_level: 33 cm
              light_points:
                - {x: 30 cm, y: 20 cm, height: 10 cm, par: 150 µmol/m²/s ± 10 µmol/m²/s}
              flow_points:
                - {x: 10 cm, y: 20 cm, height: 12 cm, flow: 14 cm/s}
            inhabitants:
              corals:
                - {name: torch, plan_area: 80 cm², form: euphyllia, species: Euphyllia glabrescens, at: {x: 20 cm, y: 15 cm, height: 8 cm}}
                - {name: leathers, plan_area: 100 cm², form: soft, colonies: 3}
            """;

    @Test
    void placesLightFlowAndColoniesAreReadAndWrittenBack() {
        Plan plan = sound(PLAN);
        Coral torch = requireNonNull(plan.inhabitants()).corals().get(0);
        assertThat(requireNonNull(torch.at()).height().in("m")).isCloseTo(0.08, within(1e-12));
        assertThat(torch.species()).isEqualTo("Euphyllia glabrescens");
        assertThat(torch.colonyCount()).isEqualTo(1);
        assertThat(plan.inhabitants().corals().get(1).colonyCount()).isEqualTo(3);
        assertThat(plan.display().flowPoints().get(0).flow().in("m/s")).isCloseTo(0.14, within(1e-12));
        assertThat(plan.display().lightPoints().get(0).par().doubtIn("mol/(m^2*s)"))
                .isCloseTo(10e-6, within(1e-15));
        assertThat(sound(PlanText.write(plan))).isEqualTo(plan);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "x: 20 cm, y: 15 cm | x: 61 cm, y: 15 cm | inhabitants.corals[1].at.x: found 61 cm; expected at most the tank's inside length, 60 cm.",
                "x: 20 cm, y: 15 cm | x: 20 cm, y: 1.5 ft | inhabitants.corals[1].at.y: found 1.5 ft; expected at most the tank's inside width, 40 cm.",
                "height: 10 cm, par | height: 36 cm, par | display.light_points[1].height: found 36 cm; expected less than the tank's height, 36 cm.",
                "x: 10 cm, y: 20 cm | x: 70 cm, y: 20 cm | display.flow_points[1].x: found 70 cm; expected at most the tank's inside length, 60 cm.",
                "colonies: 3 | colonies: 2.5 | inhabitants.corals[2].colonies: found 2.5; expected a whole number of colonies.",
            })
    void aPlaceOutsideTheTankIsRefusedWhereItStands(String sound, String broken, String sentence) {
        assertThat(PlanText.read(PLAN.replace(sound, broken)))
                .isInstanceOfSatisfying(
                        PlanReading.Faulty.class,
                        faulty -> assertThat(faulty.faults())
                                .singleElement()
                                .satisfies(fault -> assertThat(fault.sentence()).isEqualTo(sentence)));
    }

    @Test
    void onePlaceForManyColoniesIsRefused() {
        assertThat(PlanText.read(PLAN.replace("form: euphyllia", "form: euphyllia, colonies: 2")))
                .isInstanceOfSatisfying(
                        PlanReading.Faulty.class,
                        faulty -> assertThat(faulty.faults().get(0).sentence())
                                .startsWith("inhabitants.corals[1].at: found one place for 2 colonies"));
    }

    private static Plan sound(String text) {
        PlanReading reading = PlanText.read(text);
        assertThat(reading).isInstanceOf(PlanReading.Sound.class);
        return ((PlanReading.Sound) reading).plan();
    }
}
