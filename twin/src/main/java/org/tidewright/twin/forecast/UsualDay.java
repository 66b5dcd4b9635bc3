package org.tidewright.twin.forecast;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Dosing;
import org.tidewright.plan.model.Light;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Salt;
import org.tidewright.plan.model.TopOff;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.law.carbonate.Limewater;
import org.tidewright.twin.run.Account;
import org.tidewright.twin.system.Lever;

/**
 * A day as a system has it after a week of the same habits: pH, gases and temperature from midnight to midnight. What is
 * tried is the keeper's own: the window, the hours of the lights, limewater or bicarbonate.
 *
 * <p>Where limewater is taken away, bicarbonate gives the same alkalinity in its place, and where it is given, it takes the
 * place of other alkalinity: so two days differ by carbon dioxide, and not by alkalinity that ran away in the week.
 */
public final class UsualDay {
    /** Days lived with the habits before the day that is told. */
    public static final int WEEK = 7;

    /** Samples from midnight to midnight. */
    public static final int SAMPLES = 97;

    /** Air changes of a room with its window open, 3 to 10 an hour; common practice. */
    @Unit("1/s")
    public static final double OPEN_WINDOW = 5.0 / 3600;

    /** Evening hours from which limewater runs, and for how long; common practice. */
    private static final LocalTime NIGHT = LocalTime.of(22, 0);

    private static final double NIGHT_LASTS = 9 * 3600;

    private static final double DAY = 86_400;

    /** dKH in 1 mol/m³ of charge: 10 mg/L of calcium oxide, 56.077 g/mol, are one degree. */
    private static final double DEGREES_PER_MOLE = 56.077 / 20;

    private static final String BICARBONATE = "bicarbonate in place of limewater";
    private static final String AT_NIGHT = "limewater at night";
    private static final String TOP_OFF = "top-off";

    private static final Set<Quantity> TOLD = Set.of(
            Quantity.PH,
            Quantity.OXYGEN,
            Quantity.OXYGEN_SATURATION,
            Quantity.TEMPERATURE,
            Quantity.SALINITY,
            Quantity.CARBON_DIOXIDE,
            Quantity.CARBON_DIOXIDE_OF_ROOM,
            Quantity.ALKALINITY,
            Quantity.LIGHT);

    private final Plan plan;
    private final Forecast forecast;
    private final Course week;

    /** What becomes of limewater. */
    public enum Lime {
        AS_PLANNED,
        NONE,
        AT_NIGHT
    }

    /**
     * Habits of a day; times are since midnight.
     *
     * @param windowLasts how long a window is open from {@code windowFrom}, 0 for never
     * @param lightsStart when the display's lights come on; null for as planned
     * @param lightsLast how long they shine; null for as planned
     * @param algaeStart when the lamps over the algae come on; null for as planned
     */
    public record Habits(
            Lime lime,
            @Unit("s") double windowFrom,
            @Unit("s") double windowLasts,
            @Nullable Double lightsStart,
            @Nullable Double lightsLast,
            @Nullable Double algaeStart) {
        /** Those of the plan. */
        public static final Habits AS_PLANNED = new Habits(Lime.AS_PLANNED, 0, 0, null, null, null);

        public Habits {
            if (!(windowFrom >= 0 && windowFrom < DAY) || !(windowLasts >= 0 && windowLasts <= DAY)) {
                throw new IllegalArgumentException("a window cannot be open from " + windowFrom + " s for "
                        + windowLasts + " s; it needs a time within the day and at most 86400 s");
            }
            for (Double time : new Double[] {lightsStart, lightsLast, algaeStart}) {
                if (time != null && !(time >= 0 && time <= DAY)) {
                    throw new IllegalArgumentException(
                            "a light's hours cannot be " + time + " s; they need 0 to 86400 s");
                }
            }
        }
    }

    /** A span of the day. */
    public record Span(@Unit("s") double from, @Unit("s") double to) {}

    /**
     * The day that is told.
     *
     * @param course from midnight to midnight, {@link #SAMPLES} samples
     * @param lit while the display's lights shine
     * @param algaeLit while lamps over algae shine
     * @param limewater saturated limewater a day, as far as doses and not the reservoir bring it
     */
    public record Day(
            Course course,
            List<Span> lit,
            List<Span> algaeLit,
            @Unit("m^3/s") double limewater) {}

    /** Of a plan. */
    public UsualDay(Plan plan) {
        this.plan = plan;
        forecast = Forecast.of(plan);
        week = week(forecast, List.of());
    }

    /** The day of the plan. */
    public Day asPlanned() {
        return day(week, Habits.AS_PLANNED, plan);
    }

    /** The day of other habits. */
    public Day with(Habits habits) {
        Plan changed = limed(habits.lime());
        Forecast from = changed.equals(plan) ? forecast : forecast.runBy(changed);
        return day(week(from, changes(from, habits)), habits, changed);
    }

    /** Whether limewater is dosed or fills the reservoir. */
    public static boolean hasLimewater(Plan plan) {
        TopOff topOff = plan.topOff();
        boolean reservoir = topOff != null
                && topOff.limewater() != null
                && topOff.limewater().in("1") > 0;
        return reservoir || plan.dosing().stream().anyMatch(UsualDay::isLime);
    }

    /** Lights over the display. */
    public static List<Light> overDisplay(Plan plan) {
        return plan.lights().stream()
                .filter(light -> light.over().equals(Names.DISPLAY))
                .toList();
    }

    /** Lamps over anything else: algae. */
    public static List<Light> overAlgae(Plan plan) {
        return plan.lights().stream()
                .filter(light -> !light.over().equals(Names.DISPLAY))
                .toList();
    }

    /** When a light of the plan comes on, since midnight. */
    public @Unit("s") double startOf(Light light) {
        return forecast.twin().levers().get(light.name() + " start").setting().initial();
    }

    /** How long a light of the plan shines. */
    public @Unit("s") double hoursOf(Light light) {
        return forecast.twin().levers().get(light.name() + " hours").setting().initial();
    }

    /** Air changes of the room as planned. */
    public @Unit("1/s") double airChanges() {
        return forecast.twin().levers().get("air changes").setting().initial();
    }

    private static Course week(Forecast from, List<Change> changes) {
        return from.course(WEEK, WEEK * (SAMPLES - 1) + 1, TOLD, changes);
    }

    private List<Change> changes(Forecast from, Habits habits) {
        List<Change> changes = new ArrayList<>();
        if (habits.windowLasts() > 0) {
            Lever window = from.twin().levers().get("air changes");
            double open = Math.max(OPEN_WINDOW, window.setting().initial());
            if (habits.windowLasts() >= DAY) {
                changes.add(Change.to(window, open));
            } else {
                for (int day = 0; day < WEEK; day++) {
                    changes.add(new Change(window, open, day * DAY + habits.windowFrom(), habits.windowLasts()));
                }
            }
        }
        List<Light> lights = overDisplay(plan);
        if (!lights.isEmpty()) {
            double shift = habits.lightsStart() == null ? 0 : habits.lightsStart() - startOf(lights.get(0));
            double longer = habits.lightsLast() == null ? 0 : habits.lightsLast() - hoursOf(lights.get(0));
            for (Light light : lights) {
                moved(from, light.name() + " start", (startOf(light) + shift + DAY) % DAY, changes);
                moved(from, light.name() + " hours", Math.max(0, Math.min(DAY, hoursOf(light) + longer)), changes);
            }
        }
        if (habits.algaeStart() != null) {
            for (Light lamp : overAlgae(plan)) {
                moved(from, lamp.name() + " start", habits.algaeStart() % DAY, changes);
            }
        }
        return changes;
    }

    private static void moved(Forecast from, String name, double value, List<Change> changes) {
        Lever lever = from.twin().levers().get(name);
        if (lever.setting().initial() != value) {
            changes.add(Change.to(lever, value));
        }
    }

    private Day day(Course whole, Habits habits, Plan lived) {
        int first = (WEEK - 1) * (SAMPLES - 1);
        double[] times = new double[SAMPLES];
        Map<Quantity, double[]> values = new EnumMap<>(Quantity.class);
        for (int i = 0; i < SAMPLES; i++) {
            times[i] = DAY * i / (SAMPLES - 1);
        }
        whole.values().forEach((quantity, samples) -> {
            double[] last = new double[SAMPLES];
            System.arraycopy(samples, first, last, 0, SAMPLES);
            values.put(quantity, last);
        });
        List<Span> lit = new ArrayList<>();
        List<Light> lights = overDisplay(plan);
        for (Light light : lights) {
            double shift = habits.lightsStart() == null ? 0 : habits.lightsStart() - startOf(lights.get(0));
            double longer = habits.lightsLast() == null ? 0 : habits.lightsLast() - hoursOf(lights.get(0));
            addSpan(lit, (startOf(light) + shift + DAY) % DAY, hoursOf(light) + longer);
        }
        List<Span> algaeLit = new ArrayList<>();
        for (Light lamp : overAlgae(plan)) {
            addSpan(algaeLit, habits.algaeStart() == null ? startOf(lamp) : habits.algaeStart() % DAY, hoursOf(lamp));
        }
        double limewater = lived.dosing().stream()
                .filter(UsualDay::isLime)
                .mapToDouble(dose -> dose.perDay().in("m^3/s"))
                .sum();
        return new Day(
                new Course(times, values, whole.events(), whole.account(), whole.brokenOff()),
                lit,
                algaeLit,
                limewater);
    }

    private static void addSpan(List<Span> spans, double from, double lasts) {
        if (lasts <= 0) {
            return;
        }
        if (from + lasts <= DAY) {
            spans.add(new Span(from, from + lasts));
        } else {
            spans.add(new Span(from, DAY));
            spans.add(new Span(0, from + lasts - DAY));
        }
    }

    // ── limewater and what stands in for it ──

    private static boolean isLime(Dosing dose) {
        return dose.salt() == Salt.CALCIUM_HYDROXIDE;
    }

    private Plan limed(Lime lime) {
        return switch (lime) {
            case AS_PLANNED -> plan;
            case NONE -> hasLimewater(plan) ? withoutLime() : plan;
            case AT_NIGHT -> limeAtNight();
        };
    }

    private Plan withoutLime() {
        List<Dosing> doses = new ArrayList<>(
                plan.dosing().stream().filter(dose -> !isLime(dose)).toList());
        double alkalinity = limeAlkalinity();
        if (alkalinity > 0) {
            doses.add(steady(BICARBONATE, Salt.SODIUM_BICARBONATE, alkalinity));
        }
        return Variant.of(plan).dosed(doses, Variant.withoutLime(plan.topOff())).plan();
    }

    /** Alkalinity a second that limewater brings, by doses and by the reservoir. */
    private @Unit("mol/s") double limeAlkalinity() {
        double saturated = Limewater.alkalinity(
                Limewater.saturated(plan.room().temperature().in("degC")));
        double dosed = plan.dosing().stream()
                .filter(UsualDay::isLime)
                .mapToDouble(dose -> dose.perDay().in("m^3/s") * hydroxide(dose, saturated))
                .sum();
        return dosed + toppedUp(Stock.ALKALINITY);
    }

    private static double hydroxide(Dosing dose, double saturated) {
        if (dose.saturation() != null) {
            return dose.saturation().in("1") * saturated;
        }
        return dose.strength() == null
                ? 0
                : Limewater.alkalinity(dose.strength().in("kg/m^3") / Limewater.MOLAR_MASS);
    }

    /** What the top-off brought a second over the week of the plan: of water, what had evaporated. */
    private @Unit("*") double toppedUp(Stock stock) {
        return week.account().of(stock, forecast.twin().waters()).stream()
                        .filter(line -> line.cause().equals(TOP_OFF))
                        .mapToDouble(Account.Line::amount)
                        .sum()
                / (WEEK * DAY);
    }

    /**
     * Where none is planned, as much as makes up for what the tank uses, with the plan's other alkalinity cut down by it, and
     * never more than evaporates; where it is planned at other hours, the same at night.
     */
    private Plan limeAtNight() {
        double saturated = Limewater.alkalinity(
                Limewater.saturated(plan.room().temperature().in("degC")));
        double alkalinity = limeAlkalinity();
        List<Dosing> doses = new ArrayList<>();
        if (alkalinity > 0) {
            plan.dosing().stream().filter(dose -> !isLime(dose)).forEach(doses::add);
        } else {
            double[] course = week.of(Quantity.ALKALINITY);
            double lost = (course[0] - course[course.length - 1])
                    / DEGREES_PER_MOLE
                    * forecast.twin().volume()
                    / (WEEK * DAY);
            double others =
                    plan.dosing().stream().mapToDouble(UsualDay::alkalinityOf).sum();
            alkalinity = Math.max(0, Math.min(lost + others, toppedUp(Stock.WATER) * saturated));
            double left = others > 0 ? Math.max(0, (others + Math.max(0, lost) - alkalinity) / others) : 1;
            for (Dosing dose : plan.dosing()) {
                doses.add(alkalinityOf(dose) > 0 ? times(dose, Math.min(1, left)) : dose);
            }
            doses.removeIf(dose -> dose.perDay().in("m^3/s") < 0.01e-6 / DAY);
        }
        if (alkalinity <= 0) {
            return plan;
        }
        doses.add(new Dosing(
                AT_NIGHT,
                Salt.CALCIUM_HYDROXIDE,
                null,
                Amount.of(100, "%"),
                Amount.of(alkalinity / saturated * DAY * 1e6, "mL/d"),
                Names.DISPLAY,
                List.of(),
                NIGHT,
                Amount.of(NIGHT_LASTS / 3600, "h"),
                null));
        return Variant.of(plan).dosed(doses, Variant.withoutLime(plan.topOff())).plan();
    }

    private static double alkalinityOf(Dosing dose) {
        return dose.strength() == null || isLime(dose) || dose.salt().organicCarbon() > 0
                ? 0
                : dose.perDay().in("m^3/s")
                        * dose.strength().in("kg/m^3")
                        / dose.salt().molarMass()
                        * Math.max(0, dose.salt().alkalinity());
    }

    private static Dosing times(Dosing dose, double factor) {
        return new Dosing(
                dose.name(),
                dose.salt(),
                dose.strength(),
                dose.saturation(),
                Amount.of(dose.perDay().in("m^3/s") * factor * DAY * 1e6, "mL/d"),
                dose.into(),
                dose.times(),
                dose.from(),
                dose.daily(),
                dose.container());
    }

    private static Dosing steady(String name, Salt salt, double alkalinity) {
        double strength = 80; // g/L
        double volume = alkalinity / salt.alkalinity() * salt.molarMass() / strength;
        return new Dosing(
                name,
                salt,
                Amount.of(strength, "g/L"),
                null,
                Amount.of(volume * DAY * 1e6, "mL/d"),
                Names.DISPLAY,
                List.of(),
                null,
                null,
                null);
    }
}
