package org.tidewright.husbandry.wishlist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.arrival.Arrival;
import org.tidewright.husbandry.arrival.Arrival.Stage;
import org.tidewright.husbandry.arrival.ArrivalPlan;
import org.tidewright.husbandry.arrival.ArrivalPlanner;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.livestock.Call;
import org.tidewright.husbandry.livestock.Community;
import org.tidewright.husbandry.livestock.Verdict;

/**
 * A wish list planned from today: what has come by the logs stays, what the rules of livestock refuse is left out, all else has its
 * days.
 *
 * @param community who lives in the display today
 * @param plan the planner's answer
 * @param members all who are in the plan, by their id
 * @param refused wishes that are not planned
 * @param gone wishes that came and are no more
 */
public record ArrivalStudy(
        WishList list,
        Household household,
        Community community,
        ArrivalPlan plan,
        Map<String, Member> members,
        List<Refused> refused,
        List<Gone> gone) {
    public ArrivalStudy {
        members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
        refused = List.copyOf(refused);
        gone = List.copyOf(gone);
    }

    /**
     * Animals in the plan.
     *
     * @param animals as many as are left of them
     * @param line of the list; null for animals in quarantine that it does not name
     */
    public record Member(
            String id, Animals animals, @Nullable WishLine line) {}

    /** A wish the rules of livestock refuse, today and whatever is waited for. */
    public record Refused(String id, WishLine line, Verdict verdict) {}

    /** A wish that came and is no more. */
    public record Gone(String id, WishLine line, LocalDate day, boolean died) {}

    /** Plans a list. */
    public static ArrivalStudy of(WishList list, Household household) {
        Community community = household.community();
        LogMatch match = new LogMatch(list, household);
        Choosing choosing = new Choosing(list, household, community, match);
        ArrivalStudy study = planned(list, household, community, match, choosing);
        // What is judged in the list's order comes in another: whom the rules would refuse then is not planned either.
        for (Optional<Refused> late = refusedThen(study); late.isPresent(); late = refusedThen(study)) {
            choosing.refuse(late.get());
            study = planned(list, household, community, match, choosing);
        }
        return study;
    }

    private static ArrivalStudy planned(
            WishList list, Household household, Community community, LogMatch match, Choosing choosing) {
        Map<String, Member> members = new LinkedHashMap<>();
        List<Gone> gone = new ArrayList<>();
        RequestBuilder builder = new RequestBuilder(list, household, community, choosing.coming());
        List<String> ids = list.ids();
        for (int i = 0; i < ids.size(); i++) {
            String id = ids.get(i);
            WishLine line = list.lines().get(i);
            Past past = match.of(id);
            if (past instanceof Past.InBox there) {
                Animals left = left(line.animals(), there.alive());
                members.put(id, new Member(id, left, line));
                builder.inQuarantine(id, left, line.price(), there);
            } else if (past instanceof Past.InDisplay there) {
                Animals left = left(line.animals(), there.alive());
                members.put(id, new Member(id, left, line));
                builder.inDisplay(id, left, line.price(), there);
            } else if (past instanceof Past.Gone was) {
                gone.add(new Gone(id, line, was.day(), was.died()));
                builder.gone(id, line.animals(), line.price(), was);
            } else {
                Readiness ready = choosing.ready(id);
                if (ready != null) {
                    members.put(id, new Member(id, line.animals(), line));
                    builder.awaited(id, line, ready);
                }
            }
        }
        match.guests().forEach((id, guest) -> {
            members.put(id, new Member(id, guest.animals(), null));
            builder.inQuarantine(id, guest.animals(), null, guest.past());
        });
        ArrivalPlan plan = ArrivalPlanner.plan(builder.request());
        return new ArrivalStudy(list, household, community, plan, members, choosing.refused(), gone);
    }

    private static Animals left(Animals wished, int alive) {
        return new Animals(wished.species(), alive, wished.length());
    }

    /** The first whom the rules would refuse with those who are there by its day. */
    private static Optional<Refused> refusedThen(ArrivalStudy study) {
        List<Animals> company = new ArrayList<>(study.community().residents());
        for (Arrival arrival : study.plan().arrivals()) {
            Member member = study.member(arrival.id());
            if (arrival.stage() == Stage.PLANNED && member.line() != null) {
                Verdict verdict = study.household()
                        .verdict(member.animals(), study.household().home(), company);
                if (verdict.call() == Call.NO) {
                    return Optional.of(new Refused(arrival.id(), member.line(), verdict));
                }
            }
            if (arrival.stage() != Stage.IN_DISPLAY) {
                company.add(member.animals());
            }
        }
        return Optional.empty();
    }

    /** Who an id of the plan is. */
    public Member member(String id) {
        Member member = members.get(id);
        if (member == null) {
            throw new IllegalArgumentException("“" + id + "” is not in the plan; it has " + members.keySet());
        }
        return member;
    }

    /** The days of the plan to be kept, for those that are yet to come and those in quarantine. */
    public Map<String, WishLine.Kept> days() {
        Map<String, WishLine.Kept> days = new LinkedHashMap<>();
        for (Arrival arrival : plan.arrivals()) {
            WishLine line = member(arrival.id()).line();
            if (line != null && arrival.stage() != Stage.IN_DISPLAY) {
                WishLine.Kept before = line.kept();
                // Who is there already goes on being found by the day from which it was looked for.
                LocalDate on =
                        before != null && arrival.stage() == Stage.IN_QUARANTINE ? before.on() : household.today();
                days.put(arrival.id(), new WishLine.Kept(on, arrival.in(), arrival.out()));
            }
        }
        return days;
    }

    /** Ids of wishes that have come to their end: they live in the display, or are no more. */
    public List<String> done() {
        List<String> done = new ArrayList<>(gone.stream().map(Gone::id).toList());
        plan.arrivals().stream()
                .filter(each -> each.stage() == Stage.IN_DISPLAY)
                .map(Arrival::id)
                .forEach(done::add);
        return done;
    }
}
