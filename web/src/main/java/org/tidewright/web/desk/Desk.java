package org.tidewright.web.desk;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Report;
import org.tidewright.husbandry.burden.CalmAddition;
import org.tidewright.husbandry.day.DayStudy;
import org.tidewright.husbandry.journal.BothLogs;
import org.tidewright.husbandry.journal.Journal;
import org.tidewright.husbandry.journal.Photos;
import org.tidewright.husbandry.journal.ProbeLog;
import org.tidewright.husbandry.livestock.Community;
import org.tidewright.husbandry.newtank.NewTankOrder;
import org.tidewright.husbandry.newtank.NewTankStudy;
import org.tidewright.husbandry.nutrient.NutrientReport;
import org.tidewright.husbandry.quantity.WaterStudy;
import org.tidewright.husbandry.quarantine.BareTankWater;
import org.tidewright.husbandry.rehearsal.OutageReport;
import org.tidewright.husbandry.rehearsal.WaterReport;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.species.Catalogue;
import org.tidewright.twin.forecast.UsualDay;
import org.tidewright.twin.rehearsal.OutageOrder;
import org.tidewright.twin.rehearsal.WaterMovement;
import org.tidewright.twin.system.Levers;

/** What the pages ask for. Calls may come from several threads at once. */
public interface Desk {
    /** Every system, in the order to list them. */
    List<SystemEntry> systems();

    /** A system's plan as it stands now; empty where no system has this id. */
    Optional<SystemView> system(String id);

    /** The checks of a plan. */
    Report checks(Plan plan);

    /** The order the rehearse page opens with. */
    OutageOrder usualOrder(Plan plan);

    /** A power cut, rehearsed in full. */
    OutageReport rehearse(Plan plan, OutageOrder order);

    /** The water part of a rehearsal alone; for the build page, so it should answer at once. */
    WaterReport waterAfter(Plan plan, OutageOrder order);

    /**
     * A plan's nutrients over twelve weeks.
     *
     * @param units in which handles are told
     * @param moved what is moved, by key of its {@link org.tidewright.husbandry.nutrient.Handle}, in its shown unit
     */
    NutrientReport nutrients(Plan plan, UnitSystem units, Map<String, Double> moved);

    /** Levels and flows while all runs: a movement of a single sample. */
    WaterMovement running(Plan plan);

    /** The first weeks of a plan's system, filled today. */
    NewTankStudy newTank(Plan plan, NewTankOrder order);

    /** The twin of a plan's day. */
    UsualDay usualDay(Plan plan);

    /**
     * A day with other habits.
     *
     * @param tried what of the habits is not the plan's, in words
     */
    DayStudy day(Plan plan, UsualDay.Habits habits, List<String> tried);

    /** Ammonia in a quarantine tank, by the twin of its plan. */
    BareTankWater bareTank(Plan plan);

    /** What animals that may come would do to the water, by the twin of a plan with who lives there today. */
    WaterSoon waterWith(Plan plan, Community community);

    /** The most that may come at once by the twin of a plan with who lives there today; null while that is being worked out behind the pages. */
    @Nullable
    CalmAddition calmAddition(Plan plan, Community community);

    /** The file of a system's wish list; empty where there is none. */
    String wishes(String id);

    /**
     * Keeps the file of a system's wish list.
     *
     * @param before what the writer began from
     * @return false where the file says something else by now; nothing was kept
     */
    boolean keepWishes(String id, String before, String text);

    /** Where lines about all systems are kept. */
    Journal journal();

    /** What the probes of all systems said. */
    ProbeLog probes();

    /** Journal and probes at once, for what is to stand in each or in none. */
    BothLogs bothLogs();

    /** The pictures that lines of the log refer to. */
    Photos photos();

    /** What is known of a system's water now, from its journal and its probes. */
    WaterStudy water(SystemView view);

    /** The species that are known, with the keeper's own over the program's. */
    KnownSpecies species();

    /**
     * Species, and what is wrong with the keeper's own.
     *
     * @param faults each with its file and line; a file with one counts for nothing
     */
    record KnownSpecies(Catalogue catalogue, List<String> faults) {}

    /** The time where the systems stand. */
    Clock clock();

    /** What can be moved in a plan's system. */
    Levers levers(Plan plan);

    /**
     * Keeps a text as the system's next revision.
     *
     * @param basedOnRevision the revision the writer began from
     */
    SaveResult save(String id, int basedOnRevision, String text);
}
