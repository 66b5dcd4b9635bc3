package org.tidewright.husbandry.burden;

import org.tidewright.plan.model.Plan;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;

/** The tank of the worked outage: 200 L without a sump, once rock and sand have taken their 15. */
final class WorkedOutage {
    private static final String TEXT = """
            tidewright_plan: 1
            name: Worked outage
            units: metric
            water: {salinity: 35, temperature: 26 °C, oxygen_saturation: 95 %}
            room:
              temperature: 26 °C
              humidity: 50 %
              floor_area: 20 m²
              construction: medium
              heat_loss: 40 W/K
              carbon_dioxide: 423 ppm
            display:
              length: 1 m
              width: 0.5 m
              height: 0.5 m
              bottom_height: 0.8 m
              glass: {panes: 12 mm, bottom: 12 mm, top_edge: held}
              cover: open
              rock: {dry_mass: 25 kg, displaces: 0.4 L/kg}
              sand: {dry_mass: 10 kg}
              water_level: 0.43 m
            heaters:
              - {name: heater, stands_in: display, power: 150 W, setpoint: 26 °C}
            circulation_pumps:
              - {name: stream, stands_in: display, power: 10 W}
            lights:
              - {name: lamp, over: display, power: 100 W, daily: 10 h, starts: "10:00", par: 150 µmol/m²/s}
            feeding:
              - {name: pellets, food: dry_pellet, mass: 0.6 g, times: ["09:00", "18:00"]}
            inhabitants:
              fish:
                - {name: fish, mass: 15 g, count: 4}
              coral_tissue: 5000 cm²
            stand: {mass: 80 kg, feet: 4, floor: suspended}
            """;

    private WorkedOutage() {}

    static Plan plan() {
        PlanReading reading = PlanText.read(TEXT);
        if (reading instanceof PlanReading.Sound sound) {
            return sound.plan();
        }
        throw new AssertionError(reading);
    }
}
