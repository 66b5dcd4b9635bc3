package org.tidewright.husbandry.mixing;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.estimate.Known;
import org.tidewright.husbandry.limit.Keeping;
import org.tidewright.husbandry.limit.SafeRate;
import org.tidewright.husbandry.limit.TargetRange;
import org.tidewright.husbandry.quantity.QuantityCourse;
import org.tidewright.husbandry.quantity.QuantityStudy;
import org.tidewright.husbandry.quantity.WaterStudy;
import org.tidewright.husbandry.water.SystemWater;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.NewWater;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.WaterChange;
import org.tidewright.plan.model.WaterKept;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Unit;

/**
 * What the mixing desk knows of a system before anything is typed: the log's word first, then the plan's.
 *
 * @param levels of the system's water now
 * @param rates by which the levels rise a second between water changes, doses as they stand; negative where they fall
 * @param newWater as the plan mixes it
 * @param targets to bring the levels to
 * @param change volume changed each time; null where the plan has no habit
 * @param every time from one change to the next; null likewise
 * @param reservoir of the top-off; null where there is none
 */
public record KnownSystem(
        Keeping keeping,
        Given volume,
        Given evaporation,
        Map<WaterQuantity, Given> levels,
        Map<WaterQuantity, Given> rates,
        Map<WaterQuantity, Given> newWater,
        Map<WaterQuantity, Given> targets,
        @Nullable Given change,
        @Nullable Given every,
        @Nullable Given reservoir,
        Given room,
        Given humidity) {

    /** Of a computed evaporation; ripples, draughts and the room's seasons are not in it: a guess. */
    private static final double EVAPORATION_ERROR = 0.3;

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter DAY_OF_YEAR = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
    private static final Origin PLAN = new Origin(Basis.YOUR_PLAN, "");

    /**
     * Gathers it.
     *
     * @param volume all water in circulation while the system runs
     * @param zone in which days are told
     */
    public static KnownSystem of(Plan plan, WaterStudy study, @Unit("m^3") double volume, ZoneId zone) {
        double evaporation = SystemWater.evaporation(plan);
        WaterChange habit =
                plan.waterChanges().isEmpty() ? null : plan.waterChanges().get(0);
        return new KnownSystem(
                Keeping.of(plan),
                new Given(volume, 0, new Origin(Basis.COMPUTED, "all water in circulation")),
                new Given(
                        evaporation,
                        EVAPORATION_ERROR * evaporation,
                        new Origin(Basis.COMPUTED, "open surfaces in a still room, fans left out")),
                levels(plan, study, zone),
                rates(study, zone),
                newWater(plan),
                targets(plan),
                habit == null ? null : given(habit.volume(), "m^3", PLAN),
                habit == null ? null : given(habit.every(), "s", PLAN),
                plan.topOff() == null ? null : given(plan.topOff().reservoir(), "m^3", PLAN),
                given(plan.room().temperature(), "degC", PLAN),
                given(plan.room().humidity(), "1", PLAN));
    }

    private static Given given(Amount amount, String unit, Origin origin) {
        return new Given(amount.in(unit), amount.doubtIn(unit), origin);
    }

    private static Map<WaterQuantity, Given> levels(Plan plan, WaterStudy study, ZoneId zone) {
        Map<WaterQuantity, Given> levels = new EnumMap<>(WaterQuantity.class);
        WaterKept kept = plan.water();
        put(levels, WaterQuantity.SALINITY, kept.salinity(), PLAN);
        put(levels, WaterQuantity.TEMPERATURE, kept.temperature(), PLAN);
        put(levels, WaterQuantity.ALKALINITY, kept.alkalinity(), PLAN);
        put(levels, WaterQuantity.CALCIUM, kept.calcium(), PLAN);
        put(levels, WaterQuantity.MAGNESIUM, kept.magnesium(), PLAN);
        put(levels, WaterQuantity.NITRATE, kept.nitrate(), PLAN);
        put(levels, WaterQuantity.PHOSPHATE, kept.phosphate(), PLAN);
        for (WaterQuantity quantity : KnownWater.KEPT) {
            study.of(quantity).ifPresent(found -> {
                Known now = found.now();
                levels.put(
                        quantity,
                        new Given(
                                Math.max(quantity.least(), now.value()),
                                now.standardError(),
                                new Origin(Basis.YOUR_LOG, lastRead(found, study.now(), zone))));
            });
        }
        return levels;
    }

    private static String lastRead(QuantityStudy study, Instant now, ZoneId zone) {
        List<QuantityCourse.Dot> readings = study.course().readings();
        if (readings.isEmpty()) {
            return "last read more than twelve weeks ago";
        }
        ZonedDateTime last = readings.get(readings.size() - 1).at().atZone(zone);
        boolean thisYear = last.getYear() == now.atZone(zone).getYear();
        return (thisYear ? DAY : DAY_OF_YEAR).format(last);
    }

    private static Map<WaterQuantity, Given> rates(WaterStudy study, ZoneId zone) {
        Map<WaterQuantity, Given> rates = new EnumMap<>(WaterQuantity.class);
        for (QuantityStudy found : study.quantities()) {
            Known use = found.use();
            if (use != null && KnownWater.KEPT.contains(found.quantity())) {
                List<QuantityCourse.Step> doses = found.course().doses();
                double brought = doses.isEmpty()
                        ? 0
                        : doses.get(doses.size() - 1).brings().value();
                rates.put(
                        found.quantity(),
                        new Given(
                                (brought - use.value()) / SafeRate.DAY,
                                Objects.requireNonNull(found.change()).standardError() / SafeRate.DAY,
                                new Origin(
                                        Basis.YOUR_LOG,
                                        (brought > 0 ? "use and doses as they stand, " : "")
                                                + lastRead(found, study.now(), zone))));
            }
        }
        return rates;
    }

    private static Map<WaterQuantity, Given> newWater(Plan plan) {
        Map<WaterQuantity, Given> water = new EnumMap<>(WaterQuantity.class);
        NewWater mixed = plan.newWater();
        if (mixed == null) {
            return water;
        }
        put(water, WaterQuantity.SALINITY, mixed.salinity(), PLAN);
        put(
                water,
                WaterQuantity.TEMPERATURE,
                mixed.temperature() == null ? plan.water().temperature() : mixed.temperature(),
                mixed.temperature() == null ? new Origin(Basis.YOUR_PLAN, "as warm as the system") : PLAN);
        put(water, WaterQuantity.ALKALINITY, mixed.alkalinity(), PLAN);
        put(water, WaterQuantity.CALCIUM, mixed.calcium(), PLAN);
        put(water, WaterQuantity.MAGNESIUM, mixed.magnesium(), PLAN);
        put(water, WaterQuantity.NITRATE, mixed.nitrate(), PLAN);
        put(water, WaterQuantity.PHOSPHATE, mixed.phosphate(), PLAN);
        return water;
    }

    private static Map<WaterQuantity, Given> targets(Plan plan) {
        Map<WaterQuantity, Given> targets = new EnumMap<>(WaterQuantity.class);
        for (WaterQuantity quantity : KnownWater.KEPT) {
            TargetRange.of(plan, quantity).ifPresent(range -> {
                double aim = range.aim(plan);
                boolean middle = Math.abs(aim - (range.least() + range.most()) / 2) < 1e-9 * (1 + Math.abs(aim));
                Origin origin = !middle
                        ? new Origin(Basis.YOUR_PLAN, "as the water is kept")
                        : range.basis() == Basis.YOUR_PLAN
                                ? new Origin(Basis.YOUR_PLAN, "the middle of your targets")
                                : new Origin(range.basis(), "the middle of " + range.detail());
                targets.put(quantity, new Given(aim, 0, origin));
            });
        }
        return targets;
    }

    private static void put(
            Map<WaterQuantity, Given> water, WaterQuantity quantity, @Nullable Amount amount, Origin origin) {
        if (amount != null) {
            water.put(quantity, given(amount, quantity.held(), origin));
        }
    }
}
