package org.tidewright.web.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.json.ShopJson;
import org.tidewright.husbandry.shop.BadSign;
import org.tidewright.husbandry.shop.NameSearch;
import org.tidewright.husbandry.shop.ShopAnimal;
import org.tidewright.husbandry.shop.ShopKind;
import org.tidewright.husbandry.shop.Tally;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.species.Species;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;
import org.tidewright.web.drawing.SignDrawing;

/**
 * At the shop: a species looked up with its verdict, and what to look at on the animal itself.
 *
 * @param household the system it is judged for, and with whom
 * @param unknown residents that no species goes by, so that nothing is judged of them
 * @param look as typed
 * @param note on what was found; empty for nothing to say
 * @param kind of animal whose signs are shown
 * @param tally what the ticked signs of that kind add up to
 * @param files addresses of all that the page is made of besides itself
 */
public record ShopPage(
        String href,
        String household,
        List<String> unknown,
        List<String> faults,
        List<String> ownFaults,
        String look,
        String note,
        List<Found> found,
        Choice kind,
        List<KindPart> kinds,
        String tally,
        List<String> files) {
    private static final int SHOWN = 8;
    private static final int REASONS = 5;
    private static final int LONGEST = 100;

    /**
     * A species that was found; marks and words as on the page Life.
     *
     * @param reasons some besides the lead
     * @param whole words of the link to the whole verdict, with how many reasons it has more
     */
    public record Found(
            ShopAnimal animal,
            String word,
            String mark,
            boolean open,
            List<Reason> reasons,
            String whole,
            String href) {}

    /** A reason besides the lead. */
    public record Reason(String mark, String label, String sentence) {}

    /** The signs of a kind. */
    public record KindPart(String key, String words, List<Part> parts) {}

    /** Some of its signs, under one heading. */
    public record Part(String head, List<Box> boxes) {}

    /**
     * A sign to be ticked.
     *
     * @param weight {@code leave} or {@code ask}
     * @param ground what it stands on
     * @param drawing empty for none
     */
    public record Box(BadSign sign, String weight, String ground, Markup drawing, boolean ticked) {}

    public boolean refused() {
        return !faults.isEmpty();
    }

    /**
     * The page.
     *
     * @param seen ids of the signs that are ticked
     */
    public static ShopPage of(
            Desk desk, SystemView view, Levers.Query query, List<String> seen, List<String> files, UnitSystem units) {
        Desk.KnownSpecies species = desk.species();
        CandidateSetting household = CandidateSetting.of(desk, view);
        List<String> faults = new ArrayList<>();
        String look = look(query.get("look"), faults);
        NameSearch search = NameSearch.of(look, species.catalogue().all());
        List<Species> first = search.found().stream().limit(SHOWN).toList();
        String href = Reader.href(view.entry());
        String usual = first.isEmpty()
                ? ShopKind.FISH.key()
                : ShopKind.of(first.get(0)).key();
        Choice kind = Choice.read(query, "kind", "What it is", usual, kindWords());
        if (kind.fault() != null) {
            faults.add(kind.fault() + ".");
        }
        ShopKind shown = ShopKind.ofKey(kind.chosen()).orElseThrow();
        unknownSigns(seen).forEach(id -> faults.add("“" + Entry.shortened(id) + "” is no sign of this page."));
        return new ShopPage(
                href + "/shop",
                household(view, household),
                household.community().unknown(),
                faults,
                species.faults(),
                look,
                note(look, search, first.size()),
                ShopAnimal.judge(first, household.setting(), units).stream()
                        .map(animal -> found(animal, href, first.size() == 1))
                        .toList(),
                kind,
                Arrays.stream(ShopKind.values()).map(each -> kind(each, seen)).toList(),
                Tally.sentence(shown.signs().stream()
                        .filter(sign -> seen.contains(sign.id()))
                        .toList()),
                files);
    }

    /** All species, judged, as the page's script and other programs read them. */
    public static String json(Desk desk, SystemView view, UnitSystem units) {
        return ShopJson.text(
                view.entry().id(),
                OffsetDateTime.now(desk.clock()),
                ShopAnimal.judge(
                        desk.species().catalogue().all(),
                        CandidateSetting.of(desk, view).setting(),
                        units),
                units);
    }

    private static String look(@Nullable String typed, List<String> faults) {
        String look = typed == null ? "" : typed.strip();
        if (look.length() > LONGEST) {
            faults.add("found a name of " + look.length() + " letters; expected at most " + LONGEST + ".");
            return look.substring(0, LONGEST);
        }
        return look;
    }

    private static List<String> kindWords() {
        List<String> words = new ArrayList<>();
        for (ShopKind kind : ShopKind.values()) {
            words.add(kind.key());
            words.add(kind.words());
        }
        return words;
    }

    private static Set<String> unknownSigns(List<String> seen) {
        Set<String> unknown = new TreeSet<>(seen);
        for (ShopKind kind : ShopKind.values()) {
            kind.signs().forEach(sign -> unknown.remove(sign.id()));
        }
        return unknown;
    }

    private static String household(SystemView view, CandidateSetting household) {
        int kinds = household.community().residents().size();
        String with = kinds == 0
                ? "where nobody that is known lives yet"
                : "beside the " + kinds + (kinds == 1 ? " kind that lives" : " kinds that live") + " there";
        return "Judged for " + view.entry().name() + ", " + with + ".";
    }

    private static String note(String look, NameSearch search, int shown) {
        if (look.isEmpty()) {
            return "";
        }
        int all = search.found().size();
        if (all == 0) {
            return "No species that is known has “" + look + "” in a name.";
        }
        String more = all > shown ? all - shown + " more: type more of the name." : "";
        return search.isShortened(look)
                ? ("No name has “" + look + "” in it; these have “" + search.by() + "”. " + more).strip()
                : more;
    }

    private static Found found(ShopAnimal animal, String href, boolean open) {
        String name = animal.species().name().scientific();
        int left = animal.reasons().size() - 1 - REASONS;
        return new Found(
                animal,
                VerdictPart.word(animal.call()),
                VerdictPart.mark(animal.call()),
                open,
                animal.reasons().stream()
                        .skip(1)
                        .limit(REASONS)
                        .map(reason -> new Reason(
                                VerdictPart.mark(reason.call()), VerdictPart.label(reason.call()), reason.sentence()))
                        .toList(),
                left > 0
                        ? "The whole verdict: " + left + (left == 1 ? " reason" : " reasons") + " more, and sources"
                        : "The whole verdict, with its sources",
                href + "/life?consider=" + URLEncoder.encode(name, StandardCharsets.UTF_8));
    }

    private static KindPart kind(ShopKind kind, List<String> seen) {
        Map<String, List<Box>> parts = new LinkedHashMap<>();
        for (BadSign sign : kind.signs()) {
            parts.computeIfAbsent(sign.part(), head -> new ArrayList<>()).add(box(sign, seen));
        }
        return new KindPart(
                kind.key(),
                kind.words(),
                parts.entrySet().stream()
                        .map(part -> new Part(part.getKey(), part.getValue()))
                        .toList());
    }

    private static Box box(BadSign sign, List<String> seen) {
        String basis = sign.basis().words();
        return new Box(
                sign,
                sign.weight().name().toLowerCase(Locale.ROOT),
                sign.detail().isEmpty() ? basis : basis + ": " + sign.detail(),
                sign.drawn() == null ? Markup.EMPTY : new Markup(SignDrawing.of(sign.drawn())),
                seen.contains(sign.id()));
    }
}
