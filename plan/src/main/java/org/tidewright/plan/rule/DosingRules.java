package org.tidewright.plan.rule;

import org.tidewright.plan.model.Dosing;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Salt;

/** Dosing: how strong a solution is, and when it runs. */
final class DosingRules {
    private DosingRules() {}

    static void check(Plan plan, Findings findings) {
        for (int i = 0; i < plan.dosing().size(); i++) {
            String path = "dosing[" + (i + 1) + "]";
            Dosing dosing = plan.dosing().get(i);
            strength(dosing, path, findings);
            pulsesOrWindow(dosing, path, findings);
            RegimeRules.inOrderOfTheDay(path + ".times", dosing.times(), findings);
        }
    }

    private static void strength(Dosing dosing, String path, Findings findings) {
        if (dosing.salt() == Salt.CALCIUM_HYDROXIDE) {
            if ((dosing.strength() == null) == (dosing.saturation() == null)) {
                findings.add(
                        path,
                        dosing.strength() == null ? "neither saturation nor strength" : "both saturation and strength",
                        "for limewater one of them: its share of saturation, or its strength",
                        "Limewater made with lime to spare and left to settle is saturation: 100 %.");
            }
            return;
        }
        if (dosing.strength() == null) {
            findings.add(
                    path,
                    "no key “strength”",
                    "mass of the salt in a volume of the solution, such as 80 g/L",
                    "Divide the mass you weigh in by the volume you fill up to.");
        }
        if (dosing.saturation() != null) {
            findings.add(
                    path + ".saturation",
                    "a share of saturation",
                    "none: only limewater (calcium_hydroxide) is told so",
                    "Remove this key and give the strength.");
        }
    }

    private static void pulsesOrWindow(Dosing dosing, String path, Findings findings) {
        boolean window = dosing.from() != null || dosing.daily() != null;
        if (window && !dosing.times().isEmpty()) {
            findings.add(
                    path,
                    "both times and a window",
                    "times (pulses), or from and daily (spread evenly), or none of them (spread over the day)",
                    "");
        } else if (window && (dosing.from() == null || dosing.daily() == null)) {
            findings.add(
                    path,
                    dosing.from() == null ? "no key “from”" : "no key “daily”",
                    "from and daily together: when the window begins and how long it is",
                    "");
        }
    }
}
