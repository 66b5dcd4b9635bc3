package org.tidewright.twin.system;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Rock;
import org.tidewright.plan.model.Sump;
import org.tidewright.twin.contract.Drawn;

/**
 * Dry mass of rock, kg.
 *
 * @param all in display, sump and refugium
 */
record Rocks(Drawn inDisplay, Drawn all) {
    static Rocks of(Plan plan, Stated stated) {
        Drawn inDisplay = mass("display", plan.display().rock(), stated);
        List<Drawn> all = new ArrayList<>(List.of(inDisplay));
        if (plan.sump() != null) {
            for (Sump.Section section : plan.sump().sections()) {
                all.add(mass(section.name(), section.rock(), stated));
            }
        }
        if (plan.refugium() != null) {
            all.add(mass(plan.refugium().name(), plan.refugium().rock(), stated));
        }
        return new Rocks(inDisplay, draw -> {
            double sum = 0;
            for (Drawn each : all) {
                sum += each.in(draw);
            }
            return sum;
        });
    }

    private static Drawn mass(String place, @Nullable Rock rock, Stated stated) {
        return rock == null ? Drawn.exactly(0) : stated.of("rock in the " + place + ", dry mass", rock.dryMass(), "kg");
    }
}
