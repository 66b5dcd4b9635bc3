package org.tidewright.husbandry.wishlist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.livestock.Animals;

/**
 * What a keeper wishes for one system.
 *
 * @param lines in the keeper's order: of two that cannot both come the earlier is meant
 * @param budget of a calendar month, in hundredths of the currency's unit; null where money does not matter
 * @param nothingBefore the first day on which anything may come; null for any day
 */
public record WishList(
        List<WishLine> lines,
        @Nullable Long budget,
        @Nullable LocalDate nothingBefore) {
    /** Of nothing. */
    public static final WishList EMPTY = new WishList(List.of(), null, null);

    /** More wishes are no list any more, and no plan for one year. */
    public static final int MOST = 24;

    public WishList {
        lines = List.copyOf(lines);
    }

    /** The lines' ids, in their order: {@code amphiprion-ocellaris}, the second of a kind {@code amphiprion-ocellaris-2}. */
    public List<String> ids() {
        Map<String, Integer> seen = new HashMap<>();
        List<String> ids = new ArrayList<>();
        for (WishLine line : lines) {
            String name = line.animals().species().name().scientific().toLowerCase(Locale.ROOT);
            String id = name.replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
            int number = seen.merge(id, 1, Integer::sum);
            ids.add(number == 1 ? id : id + "-" + number);
        }
        return ids;
    }

    /** Lengths are shown to a tenth of an inch: one that is typed back so is the one it was. */
    private static final double SHOWN = 0.5 * 0.00254 + 1e-9;

    /** The same lines anew, with the days that were kept for those of them that were there before. */
    public WishList keepingDaysOf(WishList before) {
        List<WishLine> left = new ArrayList<>(before.lines());
        List<WishLine> kept = new ArrayList<>();
        for (WishLine line : lines) {
            WishLine was = left.stream().filter(line::isSameWish).findFirst().orElse(null);
            left.remove(was);
            kept.add(was == null ? line : asBefore(line, was));
        }
        return new WishList(kept, budget, nothingBefore);
    }

    private static WishLine asBefore(WishLine line, WishLine was) {
        boolean sameLength = Math.abs(line.animals().length() - was.animals().length()) <= SHOWN;
        Animals animals = sameLength ? was.animals() : line.animals();
        return new WishLine(animals, line.price(), line.notBefore(), line.note(), was.kept());
    }

    /** The same with days for some wishes, by their ids; the others keep what they had. */
    public WishList keeping(Map<String, WishLine.Kept> days) {
        List<WishLine> kept = new ArrayList<>();
        List<String> ids = ids();
        for (int i = 0; i < lines.size(); i++) {
            WishLine line = lines.get(i);
            kept.add(line.keeping(days.getOrDefault(ids.get(i), line.kept())));
        }
        return new WishList(kept, budget, nothingBefore);
    }

    /** Whether days were kept for any of them. */
    public boolean isKept() {
        return lines.stream().anyMatch(line -> line.kept() != null);
    }
}
