package org.tidewright.plan.rule;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Display;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Rock;

/** The display: its level, and what stands in it. */
final class DisplayRules {
    private DisplayRules() {}

    static void check(Plan plan, Findings findings) {
        Display display = plan.display();
        if (plan.overflow() == null && display.waterLevel() == null) {
            findings.add(
                    "display",
                    "no key “water_level”",
                    "the height of the water, as no overflow sets it",
                    "Add water_level: and measure up from the inside bottom.");
        }
        if (plan.overflow() != null && display.waterLevel() != null) {
            findings.add(
                    "display.water_level",
                    "a water level beside an overflow",
                    "one of the two",
                    "The overflow sets the level: remove this key.");
        }
        if (display.waterLevel() != null) {
            findings.notBelow("display.water_level", display.waterLevel(), "the tank's height", display.height());
        }
        rock(findings, "display.rock", display.rock(), display);
    }

    private static void rock(Findings findings, String path, @Nullable Rock rock, Display display) {
        if (rock == null) {
            return;
        }
        if (rock.top() != null) {
            findings.notBelow(path + ".top", rock.top(), "the tank's height", display.height());
        }
        double displaced = rock.dryMass().in("kg")
                * (rock.displaces() == null ? 0.36e-3 : rock.displaces().in("m^3/kg"));
        double volume = display.length().in("m")
                * display.width().in("m")
                * display.height().in("m");
        if (displaced > 0.8 * volume) {
            findings.add(
                    path + ".dry_mass", rock.dryMass().toString(), "rock that leaves at least a fifth for water", "");
        }
    }
}
