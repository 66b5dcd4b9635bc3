package org.tidewright.plan.rule;

import java.util.List;
import org.tidewright.plan.model.CirculationPump;
import org.tidewright.plan.model.Plan;

/** The parts of a circulation pump's programme. */
final class ProgrammeRules {
    private static final int DAY = 86400;

    private ProgrammeRules() {}

    static void check(Plan plan, Findings findings) {
        for (int i = 0; i < plan.circulationPumps().size(); i++) {
            apart(plan.circulationPumps().get(i).programme(), "circulation_pumps[" + (i + 1) + "].programme", findings);
        }
    }

    /** Reports each part that begins while an earlier one lasts, or lasts until an earlier one begins again. */
    private static void apart(List<CirculationPump.ProgrammePart> parts, String path, Findings findings) {
        for (int later = 1; later < parts.size(); later++) {
            for (int earlier = 0; earlier < later; earlier++) {
                if (overlap(parts.get(earlier), parts.get(later))) {
                    CirculationPump.ProgrammePart other = parts.get(earlier);
                    findings.add(
                            path + "[" + (later + 1) + "]",
                            "from " + parts.get(later).from() + " for "
                                    + parts.get(later).daily(),
                            "hours apart from those of part " + (earlier + 1) + ", from " + other.from() + " for "
                                    + other.daily(),
                            "Let one part end before the next begins; a part may run past midnight.");
                    break;
                }
            }
        }
    }

    private static boolean overlap(CirculationPump.ProgrammePart one, CirculationPump.ProgrammePart other) {
        return begins(other, one) < one.daily().in("s")
                || begins(one, other) < other.daily().in("s");
    }

    /** Seconds from the start of one part to the next start of another. */
    private static double begins(CirculationPump.ProgrammePart part, CirculationPump.ProgrammePart after) {
        return Math.floorMod(part.from().toSecondOfDay() - after.from().toSecondOfDay(), DAY);
    }
}
