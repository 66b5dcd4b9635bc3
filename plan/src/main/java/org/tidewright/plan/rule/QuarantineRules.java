package org.tidewright.plan.rule;

import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Quarantine;

/** A quarantine tank: it serves another system than itself, and its days are whole. */
final class QuarantineRules {
    private QuarantineRules() {}

    static void check(Plan plan, Findings findings) {
        Quarantine quarantine = plan.quarantine();
        if (quarantine == null) {
            return;
        }
        if (quarantine.serves().strip().equalsIgnoreCase(plan.name().strip())) {
            findings.add(
                    "quarantine.serves",
                    "“" + quarantine.serves() + "”, this system itself",
                    "the name of the system its animals go to",
                    "A quarantine tank is a body of water of its own, with a plan of its own.");
        }
        RegimeRules.wholeDays("quarantine.watch", quarantine.watch(), findings);
        RegimeRules.wholeDays("quarantine.dry", quarantine.dry(), findings);
    }
}
