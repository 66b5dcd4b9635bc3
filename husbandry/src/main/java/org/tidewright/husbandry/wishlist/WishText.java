package org.tidewright.husbandry.wishlist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.livestock.Candidates;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.species.Catalogue;

/**
 * A wish list as a keeper types it, an animal to a line: {@code 2 ocellaris clownfish 4 cm price 60 from 2026-12-20 (for the
 * left corner)}. Price, day and note may be left out.
 */
public final class WishText {
    private static final Pattern NOTE = Pattern.compile("\\((.*)\\)\\s*$");
    private static final Pattern PRICE = Pattern.compile("[\\s,;]+price\\s+(\\S+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern FROM = Pattern.compile("[\\s,;]+from\\s+(\\S+)", Pattern.CASE_INSENSITIVE);
    private static final int LONGEST = 400;
    private static final double INCH = 0.0254;

    private WishText() {}

    /**
     * What was read.
     *
     * @param lines empty where there are faults
     * @param faults each with its line
     */
    public record Reading(List<WishLine> lines, List<String> faults) {
        public Reading {
            lines = List.copyOf(lines);
            faults = List.copyOf(faults);
        }
    }

    /** Reads what was typed; empty lines are passed over. */
    public static Reading read(String text, Catalogue catalogue) {
        List<WishLine> lines = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        List<String> typed = text.lines().toList();
        for (int i = 0; i < typed.size(); i++) {
            String line = typed.get(i).strip();
            if (line.isEmpty()) {
                continue;
            }
            try {
                lines.add(line(line, catalogue));
            } catch (IllegalArgumentException unreadable) {
                faults.add("Line " + (i + 1) + ": " + unreadable.getMessage());
            }
            if (lines.size() > WishList.MOST) {
                faults.add("found more than " + WishList.MOST + " wishes; expected at most so many at a time.");
                break;
            }
        }
        return new Reading(faults.isEmpty() ? lines : List.of(), faults);
    }

    private static WishLine line(String typed, Catalogue catalogue) {
        if (typed.length() > LONGEST) {
            throw new IllegalArgumentException(
                    "found " + typed.length() + " letters; expected at most " + LONGEST + ".");
        }
        Piece note = Piece.taken(typed, NOTE);
        Piece price = Piece.taken(note.rest(), PRICE);
        Piece from = Piece.taken(price.rest(), FROM);
        Long amount = price.found() == null ? null : amount(trimmed(price.found()));
        LocalDate day = from.found() == null ? null : day(trimmed(from.found()));
        Animals animals = Candidates.read(from.rest().replaceAll("[\\s,;]+$", ""), catalogue);
        return new WishLine(
                animals, amount, day, note.found() == null ? "" : note.found().strip(), null);
    }

    /** A comma or semicolon after it belongs to the sentence. */
    private static String trimmed(String word) {
        return word.replaceAll("[,;]+$", "");
    }

    private static Long amount(String word) {
        OptionalLong amount = Money.read(word);
        if (amount.isEmpty()) {
            throw new IllegalArgumentException("found price “" + word + "”; expected " + Money.expected() + ".");
        }
        return amount.getAsLong();
    }

    private static LocalDate day(String word) {
        LocalDate day = WishRow.day(word);
        if (day == null) {
            throw new IllegalArgumentException("found from “" + word + "”; expected " + WishRow.EXPECTED_DAY + ".");
        }
        return day;
    }

    /** Something found in a line, and the line without it. */
    private record Piece(@Nullable String found, String rest) {
        static Piece taken(String line, Pattern pattern) {
            Matcher matcher = pattern.matcher(line);
            return matcher.find()
                    ? new Piece(matcher.group(1), line.substring(0, matcher.start()) + line.substring(matcher.end()))
                    : new Piece(null, line);
        }
    }

    /** A list as it would be typed. */
    public static String write(WishList list, Catalogue catalogue, UnitSystem units) {
        StringBuilder text = new StringBuilder();
        for (WishLine line : list.lines()) {
            text.append(animals(line.animals(), catalogue, units));
            if (line.price() != null) {
                text.append(" price ").append(Money.text(line.price()));
            }
            if (line.notBefore() != null) {
                text.append(" from ").append(line.notBefore());
            }
            if (!line.note().isEmpty()) {
                text.append(" (").append(line.note()).append(')');
            }
            text.append('\n');
        }
        return text.toString();
    }

    private static String animals(Animals animals, Catalogue catalogue, UnitSystem units) {
        String common = animals.species().name().common();
        boolean told = catalogue
                .find(common)
                .filter(found -> found.name().equals(animals.species().name()))
                .isPresent();
        String count = animals.count() == 1 ? "" : animals.count() + " ";
        String name = told ? common : animals.species().name().scientific();
        if (!animals.isFish()) {
            return count + name;
        }
        return count
                + name
                + (units == UnitSystem.US
                        ? " " + WishRow.plain(animals.length() / INCH, 1) + " in"
                        : " " + WishRow.plain(100 * animals.length(), 1) + " cm");
    }
}
