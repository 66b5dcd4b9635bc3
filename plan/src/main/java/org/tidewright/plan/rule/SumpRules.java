package org.tidewright.plan.rule;

import java.util.List;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Sump;

/** The sump: sections, baffles and the running level. */
final class SumpRules {
    private SumpRules() {}

    static void check(Plan plan, Findings findings) {
        Sump sump = plan.sump();
        if (sump == null) {
            return;
        }
        List<Sump.Section> sections = sump.sections();
        for (int i = 0; i < sections.size(); i++) {
            String path = "sump.sections[" + (i + 1) + "]";
            if (i < sections.size() - 1) {
                between(sections.get(i), sump, path, findings);
            } else {
                last(sections.get(i), sump, path, findings);
            }
        }
    }

    private static void between(Sump.Section section, Sump sump, String path, Findings findings) {
        Sump.Baffle baffle = section.baffle();
        if (baffle == null) {
            findings.add(path, "no baffle", "a baffle at the end of every section but the last", "");
        } else if ((baffle.over() == null) == (baffle.under() == null)) {
            findings.add(
                    path + ".baffle",
                    baffle.over() == null ? "neither over nor under" : "both over and under",
                    "one of them: over: its height, or under: the gap below it",
                    "");
        } else if (baffle.over() != null) {
            findings.notBelow(path + ".baffle.over", baffle.over(), "the sump's height", sump.height());
        } else if (baffle.under() != null) {
            findings.notBelow(path + ".baffle.under", baffle.under(), "the sump's height", sump.height());
        }
        if (section.waterLevel() != null) {
            findings.add(
                    path + ".water_level",
                    "a water level in a section before the last",
                    "none: the baffle sets it",
                    "Remove this key.");
        }
    }

    private static void last(Sump.Section section, Sump sump, String path, Findings findings) {
        if (section.baffle() != null) {
            findings.add(path + ".baffle", "a baffle after the last section", "none", "Remove this key.");
        }
        if (section.waterLevel() == null) {
            findings.add(
                    path,
                    "no key “water_level”",
                    "the level the last section runs at",
                    "Measure it up from the sump's inside bottom while the pump runs.");
        } else {
            findings.notBelow(path + ".water_level", section.waterLevel(), "the sump's height", sump.height());
        }
    }
}
