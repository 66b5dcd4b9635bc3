package org.tidewright.husbandry.reef;

import java.util.Locale;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;

/** Small invented tanks without a sump, 120 by 50 cm with 50 cm of water. */
final class ReefPlans {
    private ReefPlans() {}

    static Plan plan(String lights, String points, String inhabitants) {
        PlanReading reading = PlanText.read("""
                tidewright_plan: 1
                name: Invented reef
                units: metric
                water: {salinity: 35, temperature: 25.5 °C, alkalinity: 8 dKH, calcium: 420 mg/L, magnesium: 1320 mg/L}
                room: {temperature: 21 °C, humidity: 50 %, floor_area: 16 m², construction: medium}
                display:
                  length: 120 cm
                  width: 50 cm
                  height: 55 cm
                  bottom_height: 80 cm
                  glass: {panes: 10 mm, bottom: 12 mm, top_edge: free}
                  cover: open
                  water_level: 50 cm
                  rock: {dry_mass: 25 kg, top: 36 cm}
                """ + points + lights + inhabitants);
        if (reading instanceof PlanReading.Faulty faulty) {
            throw new AssertionError(faulty.faults());
        }
        return ((PlanReading.Sound) reading).plan();
    }

    static String light(String par) {
        return """
                lights:
                  - {name: light bar, over: display, power: 150 W, daily: 10 h, par: %s}
                """.formatted(par);
    }

    static String lightPoint(Place at, double par) {
        return String.format(
                Locale.ROOT,
                "    - {x: %.4f cm, y: %.4f cm, height: %.4f cm, par: %.6f µmol/m²/s}%n",
                100 * at.x(),
                100 * at.y(),
                100 * at.height(),
                1e6 * par);
    }
}
