package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.livestock.Candidates;
import org.tidewright.husbandry.livestock.Community;
import org.tidewright.husbandry.livestock.Setting;
import org.tidewright.husbandry.livestock.ShoppingList;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.species.Catalogue;
import org.tidewright.plan.species.Species;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;
import org.tidewright.web.desk.WaterSoon;

/**
 * Who lives here, and whether somebody else may come.
 *
 * @param asked as it was typed, a candidate to a line
 * @param faults of what was typed
 * @param ownFaults of the keeper's own species files
 * @param unknown residents that no species goes by, so that nothing is judged of them
 * @param late whether the twin still works out what a candidate would do to the water
 * @param names of all species, to choose from
 */
public record LifePage(
        String href,
        String lead,
        String asked,
        List<String> faults,
        List<String> ownFaults,
        List<VerdictPart> verdicts,
        List<Resident> residents,
        List<String> unknown,
        boolean late,
        List<String> names) {
    private static final int MOST = 20;

    /** A kind that lives here. */
    public record Resident(String count, String common, String scientific, String now, String grown) {}

    /** Where a list of several is given its days. */
    public String arrivalsHref() {
        return href.replaceFirst("/life$", "/arrivals");
    }

    public boolean refused() {
        return !faults.isEmpty();
    }

    /** The page for the walk round a shop. */
    public String shopHref() {
        return href.replaceFirst("/life$", "/shop");
    }

    /** The page of a system; with verdicts where somebody was asked for. */
    public static LifePage of(Desk desk, SystemView view, @Nullable String typed, UnitSystem units) {
        Desk.KnownSpecies species = desk.species();
        CandidateSetting household = CandidateSetting.of(desk, view);
        Community community = household.community();
        // Asked for even where nobody is a candidate yet, so that the twin has begun before one is.
        WaterSoon water = desk.waterWith(view.plan(), community);
        List<String> faults = new ArrayList<>();
        List<Animals> candidates = candidates(typed, species.catalogue(), faults);
        List<VerdictPart> verdicts = List.of();
        if (faults.isEmpty() && !candidates.isEmpty()) {
            Setting setting = household.setting();
            verdicts = VerdictPart.of(ShoppingList.judge(candidates, setting, water), setting.home(), units);
        }
        return new LifePage(
                Reader.href(view.entry()) + "/life",
                lead(community, candidates, faults),
                typed == null ? "" : typed.strip(),
                faults,
                species.faults(),
                verdicts,
                community.residents().stream()
                        .map(each -> resident(each, units))
                        .toList(),
                community.unknown(),
                water.isLate(),
                names(species.catalogue()));
    }

    private static String lead(Community community, List<Animals> candidates, List<String> faults) {
        if (!faults.isEmpty()) {
            return "One of these is not known; nothing was judged.";
        } else if (!candidates.isEmpty()) {
            return candidates.size() == 1 ? "" : candidates.size() + " candidates, judged as one list.";
        }
        return community.residents().isEmpty()
                ? "Ask before you buy: name an animal, and see whether it may come."
                : "Ask before you buy: name an animal, and see whether it may come to live with those below.";
    }

    private static List<Animals> candidates(@Nullable String typed, Catalogue catalogue, List<String> faults) {
        List<Animals> candidates = new ArrayList<>();
        if (typed == null) {
            return candidates;
        }
        List<String> asked =
                typed.lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
        if (asked.size() > MOST) {
            faults.add("found " + asked.size() + " candidates; expected at most " + MOST + " at a time.");
            return candidates;
        }
        for (String line : asked) {
            try {
                candidates.add(Candidates.read(line, catalogue));
            } catch (Candidates.Unreadable unreadable) {
                faults.add(unreadable.getMessage());
            }
        }
        return candidates;
    }

    private static Resident resident(Animals animals, UnitSystem units) {
        Species.Name name = animals.species().name();
        return new Resident(
                String.valueOf(animals.count()),
                name.common(),
                name.scientific(),
                animals.isFish() ? length(animals.length(), units) : "",
                animals.isFish() ? length(animals.grown(), units) : "");
    }

    private static String length(double length, UnitSystem units) {
        return SentenceMarkup.plain(Figure.exact(Measure.LENGTH, length), units);
    }

    private static List<String> names(Catalogue catalogue) {
        return catalogue.all().stream()
                .map(species -> species.name().common())
                .distinct()
                .sorted(Comparator.comparing(name -> name.toLowerCase(Locale.ROOT)))
                .toList();
    }
}
