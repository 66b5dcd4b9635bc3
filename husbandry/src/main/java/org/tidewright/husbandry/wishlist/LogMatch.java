package org.tidewright.husbandry.wishlist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Event.AnimalMoved;
import org.tidewright.husbandry.journal.Event.Move;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.livestock.Candidates;
import org.tidewright.plan.species.FishSpecies;
import org.tidewright.plan.species.Species;

/**
 * Finds in the logs what has become of wishes. Only what arrived from the day a wish was kept is one of it; the first arrival is the
 * first wish of its kind. The log knows kinds and no individuals: who dies is one of the wish that came last.
 */
final class LogMatch {
    private final Household household;
    private final Map<String, Stay> wishes = new LinkedHashMap<>();
    private final List<Stay> guests = new ArrayList<>();

    /** Animals of one kind that came together, and what became of them. */
    private static final class Stay {
        final Species species;
        final double length;
        final LocalDate from;

        @Nullable
        LocalDate since;

        @Nullable
        String box;

        @Nullable
        LocalDate entered;

        @Nullable
        LocalDate lost;

        boolean died;

        /** In quarantine. */
        int outside;

        /** Have left quarantine, and are not in the display's log yet. */
        int moving;

        int inDisplay;

        Stay(Species species, double length, LocalDate from) {
            this.species = species;
            this.length = length;
            this.from = from;
        }

        Past past() {
            LocalDate came = since;
            if (came == null) {
                return new Past.Awaited();
            } else if (outside + inDisplay == 0 && lost != null) {
                return new Past.Gone(came, lost, died);
            } else if (entered != null && inDisplay > 0) {
                return new Past.InDisplay(box, came, entered, inDisplay);
            }
            return new Past.InBox(String.valueOf(box), came, outside);
        }
    }

    /** One line about animals, and where it was written; null for the display. */
    private record Moved(LocalDate day, @Nullable String box, AnimalMoved event, Species species) {}

    LogMatch(WishList list, Household household) {
        this.household = household;
        List<String> ids = list.ids();
        for (int i = 0; i < list.lines().size(); i++) {
            WishLine line = list.lines().get(i);
            WishLine.Kept kept = line.kept();
            Animals animals = line.animals();
            LocalDate from = kept == null ? LocalDate.MAX : kept.on();
            wishes.put(ids.get(i), new Stay(animals.species(), animals.length(), from));
        }
        moves().forEach(this::moved);
    }

    private List<Moved> moves() {
        List<Moved> moves = new ArrayList<>();
        household.log().forEach(line -> add(moves, line, null));
        household.boxes().forEach(box -> box.log().forEach(line -> add(moves, line, box.name())));
        // What leaves a quarantine tank has left it before it comes into the display on the same day.
        moves.sort(Comparator.comparing(Moved::day).thenComparing(move -> move.box() == null));
        return moves;
    }

    private void add(List<Moved> moves, Line line, @Nullable String box) {
        LocalDate day = household.day(line);
        if (line.event() instanceof AnimalMoved moved && !day.isAfter(household.today())) {
            Species species = household.catalogue().find(moved.animal()).orElse(null);
            if (species != null) {
                moves.add(new Moved(day, box, moved, species));
            }
        }
    }

    private void moved(Moved move) {
        if (move.event().move() == Move.ARRIVED) {
            if (move.box() == null) {
                enters(move);
            } else {
                comes(move);
            }
        } else {
            goes(move);
        }
    }

    private List<Stay> of(Moved move) {
        List<Stay> all = new ArrayList<>(wishes.values());
        all.addAll(guests);
        return all.stream().filter(each -> each.species.equals(move.species())).toList();
    }

    private void comes(Moved move) {
        Stay stay = of(move).stream()
                .filter(each -> each.since == null && !move.day().isBefore(each.from))
                .findFirst()
                .orElseGet(() -> guest(move));
        stay.since = move.day();
        stay.box = move.box();
        stay.outside += move.event().count();
    }

    private Stay guest(Moved move) {
        Double length = move.event().length();
        double each = length != null ? length : move.species() instanceof FishSpecies fish ? Candidates.sold(fish) : 0;
        Stay guest = new Stay(move.species(), each, LocalDate.MIN);
        guests.add(guest);
        return guest;
    }

    /** Into the display: those who have left quarantine, else a wish that came without. */
    private void enters(Moved move) {
        int count = move.event().count();
        for (Stay stay : of(move)) {
            if (stay.since != null && stay.moving > 0 && count > 0) {
                int now = Math.min(count, stay.moving);
                stay.moving -= now;
                stay.inDisplay += now;
                stay.entered = stay.entered == null ? move.day() : stay.entered;
                count -= now;
            }
        }
        if (count > 0) {
            int left = count;
            of(move).stream()
                    .filter(each -> each.since == null && !move.day().isBefore(each.from))
                    .findFirst()
                    .ifPresent(stay -> {
                        stay.since = move.day();
                        stay.entered = move.day();
                        stay.inDisplay = left;
                    });
        }
    }

    private void goes(Moved move) {
        int count = move.event().count();
        List<Stay> there = new ArrayList<>(of(move));
        Collections.reverse(there);
        for (Stay stay : there) {
            boolean here = move.box() == null ? stay.inDisplay > 0 : move.box().equals(stay.box) && stay.outside > 0;
            if (!here || count == 0) {
                continue;
            }
            int now = Math.min(count, move.box() == null ? stay.inDisplay : stay.outside);
            count -= now;
            if (move.box() == null) {
                stay.inDisplay -= now;
            } else {
                stay.outside -= now;
                stay.moving += move.event().move() == Move.LEFT ? now : 0;
            }
            stay.lost = move.day();
            stay.died = move.event().move() == Move.DIED;
        }
    }

    /** What has become of a wish. */
    Past of(String id) {
        Stay stay = wishes.get(id);
        return stay == null ? new Past.Awaited() : stay.past();
    }

    /** Animals in quarantine that are nobody's wish, by an id of their own. */
    Map<String, Guest> guests() {
        Map<String, Guest> staying = new LinkedHashMap<>();
        for (Stay stay : guests) {
            if (stay.past() instanceof Past.InBox there) {
                String id = "in quarantine " + (staying.size() + 1);
                staying.put(id, new Guest(new Animals(stay.species, there.alive(), stay.length), there));
            }
        }
        return staying;
    }

    /** Animals in quarantine that nobody wished for here. */
    record Guest(Animals animals, Past.InBox past) {}
}
