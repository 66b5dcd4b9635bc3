package org.tidewright.husbandry.shop;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.livestock.Call;
import org.tidewright.husbandry.livestock.Candidates;
import org.tidewright.husbandry.livestock.Setting;
import org.tidewright.husbandry.livestock.Verdict;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.species.FishSpecies;
import org.tidewright.plan.species.InvertebrateSpecies;
import org.tidewright.plan.species.Species;
import org.tidewright.seawater.unit.Unit;

/**
 * A species as it is told in a shop: whether one of it, at the length it is usually sold, may come.
 *
 * @param lead the verdict in a sentence
 * @param size what it was judged as, and how large it grows, in a sentence
 * @param sold length it was judged at; null for what is no fish
 * @param grown length or width of the grown animal; null where it is not known
 * @param becomes what would turn a “not yet” into a yes
 * @param reasons all that does not simply hold, the worst first: the lead is the first of them
 * @param cautions at bringing it home and in
 */
public record ShopAnimal(
        Species species,
        ShopKind kind,
        Call call,
        String lead,
        String size,
        @Nullable @Unit("m") Double sold,
        @Nullable @Unit("m") Double grown,
        List<String> becomes,
        List<Reason> reasons,
        List<String> cautions) {
    public ShopAnimal {
        becomes = List.copyOf(becomes);
        reasons = List.copyOf(reasons);
        cautions = List.copyOf(cautions);
    }

    /** Something that is to be minded, has to wait, or cannot be. */
    public record Reason(Call call, String sentence) {}

    /**
     * All of these species, each judged alone beside those who live there, by the rules that answer at once: neither the twin is
     * asked nor a place sought for corals.
     */
    public static List<ShopAnimal> judge(List<? extends Species> species, Setting setting, UnitSystem units) {
        Setting quick = setting.withoutPlaces();
        return species.stream()
                .map(each -> of(Verdict.of(one(each), quick, null), units))
                .toList();
    }

    private static Animals one(Species species) {
        return new Animals(species, 1, species instanceof FishSpecies fish ? Candidates.sold(fish) : 0);
    }

    private static ShopAnimal of(Verdict verdict, UnitSystem units) {
        Animals candidate = verdict.candidate();
        Species species = candidate.species();
        Double grown = grown(candidate);
        return new ShopAnimal(
                species,
                ShopKind.of(species),
                verdict.call(),
                verdict.lead().text(units),
                size(candidate, grown, units),
                candidate.isFish() ? candidate.length() : null,
                grown,
                verdict.becomes().stream().map(change -> change.text(units)).toList(),
                verdict.findings().stream()
                        .filter(finding -> finding.call() != Call.YES)
                        .map(finding ->
                                new Reason(finding.call(), finding.what().text(units)))
                        .toList(),
                verdict.cautions());
    }

    private static @Nullable @Unit("m") Double grown(Animals candidate) {
        if (candidate.isFish()) {
            return candidate.grown();
        }
        InvertebrateSpecies.Extent extent = candidate.invertebrate().extent();
        return extent == null ? null : extent.most();
    }

    private static String size(Animals candidate, @Nullable @Unit("m") Double grown, UnitSystem units) {
        if (candidate.isFish()) {
            return "Judged as one of " + length(candidate.length(), units) + ", as it is usually sold; it grows to "
                    + length(candidate.grown(), units) + ".";
        }
        return grown == null ? "Judged as one." : "Judged as one; it grows to " + length(grown, units) + ".";
    }

    private static String length(@Unit("m") double length, UnitSystem units) {
        return FigureText.of(Figure.exact(Measure.LENGTH, length), units).line();
    }
}
