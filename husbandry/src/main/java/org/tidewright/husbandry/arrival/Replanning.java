package org.tidewright.husbandry.arrival;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.arrival.Change.Added;
import org.tidewright.husbandry.arrival.Change.Animals;
import org.tidewright.husbandry.arrival.Change.Delayed;
import org.tidewright.husbandry.arrival.Change.Gone;
import org.tidewright.husbandry.arrival.Change.NewPace;
import org.tidewright.husbandry.arrival.Change.Quarantine;
import org.tidewright.husbandry.arrival.Happened.InDisplay;
import org.tidewright.husbandry.arrival.Happened.InQuarantine;
import org.tidewright.husbandry.arrival.Happened.Lost;

/** What there is to plan once some of a plan has happened and some is other than it was planned. */
final class Replanning {
    private final ArrivalPlan plan;
    private final Map<String, Wish> wishes = new LinkedHashMap<>();
    private final Map<String, Happened> happened = new LinkedHashMap<>();
    private final Map<String, QuarantineTank> tanks = new LinkedHashMap<>();
    private double present;
    private @Nullable LocalDate lastAddition;
    private @Nullable Pace pace;

    private Replanning(ArrivalPlan plan, List<Happened> more) {
        ArrivalRequest request = plan.request();
        this.plan = plan;
        present = request.pace().present();
        lastAddition = request.pace().lastAddition();
        request.wishes().forEach(wish -> wishes.put(wish.id(), wish));
        request.tanks().forEach(tank -> tanks.put(tank.name(), tank));
        request.happened().forEach(each -> happened.put(each.id(), each));
        more.forEach(each -> happened.put(each.id(), each));
    }

    static ArrivalRequest request(ArrivalPlan plan, LocalDate today, List<Happened> happened, List<Change> changes) {
        ArrivalRequest old = plan.request();
        int left = (int) ChronoUnit.DAYS.between(today, old.end());
        if (today.isBefore(old.start()) || left < 1) {
            throw new IllegalArgumentException("planning anew on " + today + ", but the plan runs from " + old.start()
                    + " to " + old.end() + "; the day must lie between, else make a new plan");
        }
        Replanning anew = new Replanning(plan, happened);
        changes.forEach(anew::change);
        anew.settle();
        return new ArrivalRequest(
                today,
                left,
                List.copyOf(anew.wishes.values()),
                List.copyOf(anew.tanks.values()),
                anew.newPace(),
                old.troubles(),
                old.preyFirst(),
                List.copyOf(anew.happened.values()));
    }

    private void change(Change change) {
        if (change instanceof Gone gone) {
            gone(gone);
        } else if (change instanceof Animals animals) {
            Wish wish = wish(animals.id());
            if (livedInDisplay(wish.id())) {
                present += animals.load() - wish.load();
            }
            wishes.put(wish.id(), wish.withAnimals(animals.count(), animals.load()));
        } else if (change instanceof Delayed delayed) {
            wishes.put(delayed.id(), wish(delayed.id()).withShop(delayed.fromShop()));
        } else if (change instanceof Quarantine quarantine) {
            wishes.put(quarantine.id(), wish(quarantine.id()).withQuarantine(quarantine.days()));
        } else if (change instanceof Added added) {
            if (wishes.putIfAbsent(added.wish().id(), added.wish()) != null) {
                throw new IllegalArgumentException("\"" + added.wish().id()
                        + "\" is on the list already; a wish that is added must have an id of its own");
            }
        } else if (change instanceof NewPace newPace) {
            pace = newPace.pace();
        }
    }

    private Wish wish(String id) {
        Wish wish = wishes.get(id);
        if (wish == null) {
            throw new IllegalArgumentException(
                    "\"" + id + "\" is to be changed, but is not on the list; it has " + wishes.keySet());
        }
        return wish;
    }

    /** Whether it was there when the old plan was made, and so counts in its present mass. */
    private boolean livedInDisplay(String id) {
        return plan.request().inDisplay(id).isPresent();
    }

    /** What never came is off the list; what did stays on it for what it cost, and has left its tank wet. */
    private void gone(Gone gone) {
        Wish wish = wish(gone.id());
        Happened was = happened.get(wish.id());
        if (was == null) {
            wishes.remove(wish.id());
            return;
        }
        if (livedInDisplay(wish.id())) {
            present = Math.max(0, present - wish.load());
        }
        if (was instanceof InDisplay there) {
            lastAddition = lastAddition == null || lastAddition.isBefore(there.day()) ? there.day() : lastAddition;
        } else if (was instanceof InQuarantine quarantine) {
            dries(quarantine.tank(), gone.day());
        }
        happened.put(wish.id(), new Lost(wish.id(), was.since(), gone.day()));
    }

    /** What has gone into the display by now counts there, and has left its tank wet. */
    private void settle() {
        for (Happened each : new ArrayList<>(happened.values())) {
            if (each instanceof InDisplay there) {
                if (!livedInDisplay(there.id())) {
                    present += wish(there.id()).load();
                }
                if (there.tank() != null) {
                    dries(there.tank(), there.day());
                }
            }
        }
    }

    private void dries(String name, LocalDate empty) {
        QuarantineTank tank = tanks.get(name);
        if (tank != null) {
            LocalDate dry = empty.plusDays(tank.dryDays());
            tanks.put(name, dry.isAfter(tank.freeFrom()) ? tank.freeFrom(dry) : tank);
        }
    }

    private Pace newPace() {
        Pace old = plan.request().pace();
        return pace != null
                ? pace
                : new Pace(present, old.share(), old.spare(), old.daysBetween(), lastAddition, old.budget());
    }
}
