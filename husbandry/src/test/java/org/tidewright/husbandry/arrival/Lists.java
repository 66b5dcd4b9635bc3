package org.tidewright.husbandry.arrival;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.tidewright.husbandry.arrival.Wish.After;

/** Short lists by hand. The display holds 100 g and takes half of what lives in it, every 14 days. */
final class Lists {
    static final LocalDate START = LocalDate.of(2031, 3, 3);
    static final int GAP = 14;
    static final int DRY = 3;

    private Lists() {}

    static LocalDate day(int day) {
        return START.plusDays(day);
    }

    /** A peaceful fish. */
    static Wish fish(String id, int grams, int quarantineDays) {
        return fish(id, grams, quarantineDays, 1);
    }

    static Wish fish(String id, int grams, int quarantineDays, int temperament) {
        return new Wish(
                id,
                "a " + id,
                1,
                grams / 1000.0,
                temperament,
                0.05,
                quarantineDays,
                null,
                null,
                null,
                List.of(),
                Set.of());
    }

    static Wish priced(Wish wish, long price) {
        return new Wish(
                wish.id(),
                wish.words(),
                wish.count(),
                wish.load(),
                wish.temperament(),
                wish.length(),
                wish.quarantineDays(),
                price,
                wish.fromShop(),
                wish.intoDisplay(),
                wish.after(),
                wish.apart());
    }

    static Wish after(Wish wish, String id, int days) {
        return new Wish(
                wish.id(),
                wish.words(),
                wish.count(),
                wish.load(),
                wish.temperament(),
                wish.length(),
                wish.quarantineDays(),
                wish.price(),
                wish.fromShop(),
                wish.intoDisplay(),
                List.of(new After(id, days)),
                wish.apart());
    }

    static Wish apart(Wish wish, String id) {
        return new Wish(
                wish.id(),
                wish.words(),
                wish.count(),
                wish.load(),
                wish.temperament(),
                wish.length(),
                wish.quarantineDays(),
                wish.price(),
                wish.fromShop(),
                wish.intoDisplay(),
                wish.after(),
                Set.of(id));
    }

    static Wish ready(Wish wish, NotBefore intoDisplay) {
        return new Wish(
                wish.id(),
                wish.words(),
                wish.count(),
                wish.load(),
                wish.temperament(),
                wish.length(),
                wish.quarantineDays(),
                wish.price(),
                wish.fromShop(),
                intoDisplay,
                wish.after(),
                wish.apart());
    }

    /** A tank for one batch at a time. */
    static QuarantineTank tank(String name) {
        return tank(name, 1);
    }

    static QuarantineTank tank(String name, int batches) {
        return new QuarantineTank(name, 0.1, batches, START, DRY, 0);
    }

    static Pace pace() {
        return new Pace(0.1, 0.5, 0, GAP, null, null);
    }

    static Pace budget(long budget) {
        return new Pace(0.1, 0.5, 0, GAP, null, budget);
    }

    static ArrivalRequest request(List<Wish> wishes, QuarantineTank... tanks) {
        return request(wishes, pace(), tanks);
    }

    static ArrivalRequest request(List<Wish> wishes, Pace pace, QuarantineTank... tanks) {
        return new ArrivalRequest(START, 365, wishes, List.of(tanks), pace, Set.of(), Set.of(), List.of());
    }

    static ArrivalRequest with(ArrivalRequest request, Set<Trouble> troubles, Set<PreyFirst> preyFirst) {
        return new ArrivalRequest(
                request.start(),
                request.horizonDays(),
                request.wishes(),
                request.tanks(),
                request.pace(),
                troubles,
                preyFirst,
                request.happened());
    }

    static ArrivalRequest within(ArrivalRequest request, int days) {
        return new ArrivalRequest(
                request.start(),
                days,
                request.wishes(),
                request.tanks(),
                request.pace(),
                request.troubles(),
                request.preyFirst(),
                request.happened());
    }

    static ArrivalRequest since(ArrivalRequest request, Happened... happened) {
        return new ArrivalRequest(
                request.start(),
                request.horizonDays(),
                request.wishes(),
                request.tanks(),
                request.pace(),
                request.troubles(),
                request.preyFirst(),
                List.of(happened));
    }
}
