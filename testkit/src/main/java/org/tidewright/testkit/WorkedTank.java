package org.tidewright.testkit;

import java.util.Locale;

/**
 * The plan, as text, of the 400 L tank of the worked examples of heat: without a sump, its room at 50 % humidity and with
 * nobody in it. It is square here, which gives 400 L the 0.675 m² of surface and 1.98 m² of wetted panes of the examples.
 */
public final class WorkedTank {
    private WorkedTank() {}

    /**
     * The plan file.
     *
     * @param room temperature in °C
     * @param floor area in m²
     * @param heatLoss of the room in W/K
     */
    public static String text(double room, double floor, double heatLoss, String cover) {
        return String.format(Locale.ROOT, """
                tidewright_plan: 1
                name: Worked tank
                units: metric
                water: {salinity: 35, temperature: 25.5 °C}
                room:
                  temperature: %s °C
                  humidity: 50 %%
                  floor_area: %s m²
                  construction: medium
                  heat_loss: %s W/K
                  carbon_dioxide: 423 ppm
                display:
                  length: 0.8216 m
                  width: 0.8216 m
                  height: 0.65 m
                  bottom_height: 0.95 m
                  glass: {panes: 12 mm, bottom: 12 mm, top_edge: held}
                  cover: %s
                  rock: {dry_mass: 40 kg, displaces: 0.2 L/kg}
                  water_level: 0.6045 m
                stand: {mass: 80 kg, feet: 4, floor: suspended}
                """, room, floor, heatLoss, cover);
    }
}
