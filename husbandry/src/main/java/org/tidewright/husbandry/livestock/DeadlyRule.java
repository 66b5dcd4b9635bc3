package org.tidewright.husbandry.livestock;

import java.util.List;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.plan.species.Hazard;

/** What has killed people, and what is a pest, comes into no tank. */
final class DeadlyRule implements Rule {
    @Override
    public List<Finding> judge(Situation seen) {
        Animals candidate = seen.candidate();
        if (candidate.species().danger().hazards().contains(Hazard.LETHAL)) {
            return List.of(Finding.of(
                    "deadly",
                    Call.NO,
                    Sentence.of("It can kill you."),
                    Sentence.of(
                            "Never keep it and never touch it; after a bite or sting call an ambulance at once.",
                            Facts.source(
                                    seen,
                                    "Danger to people",
                                    candidate.species().danger().source()))));
        }
        if (candidate.species().care().difficulty() == 0) {
            return List.of(Finding.of(
                    "deadly",
                    Call.NO,
                    Sentence.of("It is a pest that nobody brings in on purpose."),
                    Sentence.of(
                            candidate.species().notes(),
                            Facts.source(
                                    seen, "Care", candidate.species().care().source()))));
        }
        return List.of();
    }
}
