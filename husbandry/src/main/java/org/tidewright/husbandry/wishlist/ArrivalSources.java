package org.tidewright.husbandry.wishlist;

import java.util.List;
import java.util.Locale;
import org.tidewright.husbandry.advice.Sentence.Part;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.burden.CalmAddition;
import org.tidewright.plan.source.Basis;

/** What the numbers of a plan of arrivals rest on, each with its letter once it is spoken of. */
final class ArrivalSources {
    private final ArrivalStudy study;
    private final Sources sources = new Sources();

    ArrivalSources(ArrivalStudy study) {
        this.study = study;
    }

    Part quarantine() {
        return part(
                "Days in quarantine",
                Basis.YOUR_PLAN,
                "quarantine.watch of the tank; common practice is 30 at least for fish, 14 for corals");
    }

    Part dry() {
        return part("Days a quarantine tank stands dry", Basis.YOUR_PLAN, "quarantine.dry of the tank");
    }

    Part gap() {
        return part("Days between additions", Basis.COMMON_PRACTICE, "bacteria follow a load, they do not wait for it");
    }

    Part pace() {
        CalmAddition calm = study.household().calm();
        String half = "at most half of the live mass that is there, or two small fish";
        if (calm == null) {
            return part(
                    "Live mass that may come at once", Basis.COMMON_PRACTICE, half + "; the twin was not asked yet");
        }
        String found = String.format(
                Locale.ROOT,
                "small fish of %s%.0f g together kept ammonia and nitrite calm for three weeks in %d draws",
                calm.isMoreThanTried() ? "at least " : "",
                1000 * calm.mass(),
                calm.draws());
        return part(
                "Live mass that may come at once",
                Basis.COMPUTED,
                found + "; the more careful of that and of common practice counts, " + half);
    }

    Part capacity() {
        boolean twin = study.household().boxes().stream().anyMatch(box -> BoxRule.isByTwin(box.water()));
        return twin
                ? part(
                        "Live mass a quarantine tank carries",
                        Basis.COMPUTED,
                        "the twin of its plan: as much as a change of half the water a day keeps free of harmful ammonia")
                : part(
                        "Live mass a quarantine tank carries",
                        Basis.COMPUTED,
                        "0.25 g to a litre, as in the worked tank of 40 L: its plan names no fish");
    }

    Part after() {
        return part("Half a year after an easier animal", Basis.COMMON_PRACTICE, "");
    }

    Part timid() {
        return part("The timid before the bold", Basis.COMMON_PRACTICE, "tempers from the catalogue, two steps apart");
    }

    Part prey() {
        return part(
                "Prey a fortnight before its predator",
                Basis.COMMON_PRACTICE,
                "who may eat whom by the rules of the page Life; the days are this project's own");
    }

    private Part part(String what, Basis basis, String detail) {
        return new Part.Reference(sources.key(what, basis, detail));
    }

    List<Source> all() {
        return sources.all();
    }
}
