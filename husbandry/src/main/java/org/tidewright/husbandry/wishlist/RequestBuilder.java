package org.tidewright.husbandry.wishlist;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.arrival.ArrivalRequest;
import org.tidewright.husbandry.arrival.Happened;
import org.tidewright.husbandry.arrival.NotBefore;
import org.tidewright.husbandry.arrival.QuarantineTank;
import org.tidewright.husbandry.arrival.Wish;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.livestock.Community;
import org.tidewright.husbandry.quarantine.FallowState;
import org.tidewright.husbandry.quarantine.QuarantineStudy;
import org.tidewright.husbandry.quarantine.Watch;
import org.tidewright.plan.model.Quarantine;

/** Makes the planner's request of wishes that may come, and of those that have. */
final class RequestBuilder {
    /** A year and a half is planned: nobody knows more. */
    static final int HORIZON = 550;

    private static final int LONGEST_STAY = 365;

    private final WishList list;
    private final Household household;
    private final Community community;
    private final Map<String, Wish> wishes = new LinkedHashMap<>();
    private final List<Happened> happened = new ArrayList<>();
    private final Map<String, Integer> matched = new LinkedHashMap<>();
    private final @Nullable NotBefore fallow;
    private final int leastWatch;
    private final Pairs pairs;

    /**
     * Begins a request.
     *
     * @param coming all who are to be asked about each other: awaited and in quarantine, by id
     */
    RequestBuilder(WishList list, Household household, Community community, Map<String, Animals> coming) {
        this.list = list;
        this.household = household;
        this.community = community;
        fallow = fallow(household);
        leastWatch = household.boxes().stream()
                .mapToInt(box -> box.quarantine().watchDays())
                .min()
                .orElse(Quarantine.USUAL_WATCH);
        pairs = new Pairs(coming, household);
    }

    private static @Nullable NotBefore fallow(Household household) {
        double temperature = household.plan().water().temperature().in("degC");
        return FallowState.running(household.log(), temperature, household.today()).stream()
                .filter(state -> !state.isOver(household.today()))
                .reduce((a, b) -> b.restock().isBefore(a.restock()) ? a : b)
                .map(state -> new NotBefore(
                        state.restock(),
                        "the display stands without fish because of "
                                + state.parasite().words() + ", and whatever comes before begins its count anew"))
                .orElse(null);
    }

    /** One that has not come. */
    void awaited(String id, WishLine line, Readiness ready) {
        List<Wish.After> after =
                ready.after() == null ? List.of() : List.of(new Wish.After(ready.after(), Readiness.THRIVED));
        NotBefore ripe =
                ready.day() == null ? null : new NotBefore(ready.day(), "the tank is too young for it until then");
        add(id, line.animals(), line.price(), shop(line), later(ripe, fallow), after, 0);
    }

    private @Nullable NotBefore shop(WishLine line) {
        NotBefore own = line.notBefore() == null ? null : new NotBefore(line.notBefore(), "it cannot be had earlier");
        NotBefore all =
                list.nothingBefore() == null ? null : new NotBefore(list.nothingBefore(), "you want nothing before");
        return later(own, all);
    }

    private static @Nullable NotBefore later(@Nullable NotBefore one, @Nullable NotBefore other) {
        if (one == null || other == null) {
            return one == null ? other : one;
        }
        return one.day().isBefore(other.day()) ? other : one;
    }

    /** One that is in quarantine. It stays as long as the watch there lasts, which a sign of illness makes longer. */
    void inQuarantine(String id, Animals animals, @Nullable Long price, Past.InBox past) {
        LocalDate end = household.boxes().stream()
                .filter(box -> box.name().equals(past.box()))
                .map(box -> box.study(household.today()).watch())
                .filter(Objects::nonNull)
                .map(Watch::end)
                .findFirst()
                .orElse(past.since());
        int stay = (int) Math.max(0, Math.min(LONGEST_STAY, ChronoUnit.DAYS.between(past.since(), end)));
        add(id, animals, price, null, fallow, List.of(), stay);
        happened.add(new Happened.InQuarantine(id, past.box(), past.since()));
        matched.merge(past.box(), past.alive(), Integer::sum);
    }

    /** One that is in the display. */
    void inDisplay(String id, Animals animals, @Nullable Long price, Past.InDisplay past) {
        add(id, animals, price, null, null, List.of(), 0);
        happened.add(new Happened.InDisplay(id, past.box(), past.since(), past.day()));
    }

    /** One that came and is no more. */
    void gone(String id, Animals animals, @Nullable Long price, Past.Gone past) {
        add(id, animals, price, null, null, List.of(), 0);
        happened.add(new Happened.Lost(id, past.since(), past.day()));
    }

    private void add(
            String id,
            Animals animals,
            @Nullable Long price,
            @Nullable NotBefore fromShop,
            @Nullable NotBefore intoDisplay,
            List<Wish.After> after,
            int leastStay) {
        wishes.put(
                id,
                new Wish(
                        id,
                        animals.words(),
                        animals.count(),
                        LiveMass.of(animals),
                        animals.isFish() ? animals.fish().temper().temperament() : 1,
                        animals.length(),
                        Math.max(leastStay, BoxRule.days(animals, leastWatch)),
                        price,
                        fromShop,
                        intoDisplay,
                        after,
                        pairs.apart(id)));
    }

    ArrivalRequest request() {
        return new ArrivalRequest(
                household.today(),
                HORIZON,
                List.copyOf(wishes.values()),
                household.boxes().stream().map(this::tank).toList(),
                PaceRule.of(household, community, list.budget()),
                pairs.troubles(),
                pairs.preyFirst(),
                happened);
    }

    private QuarantineTank tank(Household.Box box) {
        return new QuarantineTank(
                box.name(),
                BoxRule.capacity(box.water()),
                BoxRule.wishes(box.water()),
                freeFrom(box),
                box.quarantine().dryDays(),
                box.quarantine().watchDays());
    }

    /** Animals in it that no wish accounts for keep it until their watch is over and it has stood dry. */
    private LocalDate freeFrom(Household.Box box) {
        LocalDate today = household.today();
        QuarantineStudy study = box.study(today);
        Watch watch = study.watch();
        if (watch != null && study.batch() != null && study.batch().heads() > matched.getOrDefault(box.name(), 0)) {
            LocalDate end = watch.end().isBefore(today) ? today : watch.end();
            return end.plusDays(box.quarantine().dryDays());
        }
        LocalDate dry = study.dryUntil();
        return dry == null || dry.isBefore(today) ? today : dry;
    }
}
