package org.tidewright.twin.forecast;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Dosing;
import org.tidewright.plan.model.Feeding;
import org.tidewright.plan.model.Food;
import org.tidewright.plan.model.Inhabitants;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Salt;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.nutrient.Seeding;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;
import org.tidewright.twin.system.SystemTwin;

/**
 * The first weeks of a plan's system, filled today: rock, sand and water as planned, nothing in it but the nitrifiers that
 * were brought in. It is begun with ammonium chloride or with a first fish, and then stocked. Its keeper looks every
 * midnight, and brings alkalinity back to what the plan states with bicarbonate, for nitrification eats it.
 */
public final class NewTank {
    /** Ammonia the first dose brings the water to, as nitrogen; common practice is 1 to 2, and never above 4. */
    @Unit("mg/L")
    public static final double FIRST_DOSE = 2;

    /** Below it a test kit shows nothing, as nitrogen; common practice. */
    @Unit("mg/L")
    public static final double CLEAR = 0.1;

    /** Doses in succession that must be cleared within a day; common practice. */
    public static final int CLEARED_TWICE = 2;

    /** Days between fish that come one by one; common practice. */
    public static final int FORTNIGHT = 14;

    /** Samples a day. */
    public static final int SAMPLES = 8;

    private static final double DAY = 86_400;

    /** Atomic mass of nitrogen, kg/mol. */
    private static final double NITROGEN = 14.0067e-3;

    private static final String AMMONIUM = "ammonium chloride";
    private static final String BICARBONATE = "bicarbonate";

    /** Of both solutions, g/L. */
    private static final double STRENGTH = 80;

    /** Alkalinity the keeper lets go before bringing it back, dKH. */
    private static final double SLACK = 0.3;

    /** dKH in 1 mol/m³ of charge: 10 mg/L of calcium oxide, 56.077 g/mol, are one degree. */
    private static final double DEGREES_PER_MOLE = 56.077 / 20;

    /** Ration of a day, dry food per mass of fish; common practice 1 to 4 %. */
    private static final double RATION = 0.02;

    private static final Set<Quantity> TOLD = Set.of(
            Quantity.AMMONIA,
            Quantity.FREE_AMMONIA,
            Quantity.NITRITE,
            Quantity.NITRATE,
            Quantity.ALKALINITY,
            Quantity.PH,
            Quantity.TEMPERATURE);

    private final SystemTwin twin;
    private final double[] parameters;
    private final int fish;
    private final double massOfOne;
    private final double keptAlkalinity;

    private NewTank(SystemTwin twin, double[] parameters, int fish, double massOfOne, double keptAlkalinity) {
        this.twin = twin;
        this.parameters = parameters;
        this.fish = fish;
        this.massOfOne = massOfOne;
        this.keptAlkalinity = keptAlkalinity;
    }

    /** How many nitrifiers are brought in. */
    public enum Seed {
        /** Dry rock and tap: what drifts in. */
        NONE(Seeding.TRACE),
        /** A bottle or a handful of gravel from a running tank. */
        SOME(Seeding.SOME),
        /** Live rock, or filter media of a running tank. */
        RIPE(Seeding.RIPE);

        private final Seeding seeding;

        Seed(Seeding seeding) {
            this.seeding = seeding;
        }
    }

    /**
     * How a tank began.
     *
     * @param course of its water, {@link #SAMPLES} a day
     * @param doses days on which ammonium chloride was given, each just after that day's midnight
     * @param bicarbonate that held alkalinity until it was ready, or to the end
     * @param ready day its water passed the ready test, or with fish the first from which it stays clear; infinite for not yet
     * @param atReady all its bodies then; null for not yet
     */
    public record Beginning(
            Course course,
            List<Integer> doses,
            @Unit("kg") double bicarbonate,
            @Unit("d") double ready,
            @Nullable State atReady) {}

    /**
     * A new tank of a plan.
     *
     * @param temperature it is kept at
     * @param fish how many come to live in it, one at least
     * @param massOfOne of each
     */
    public NewTank(Plan plan, @Unit("degC") double temperature, int fish, @Unit("kg") double massOfOne) {
        if (fish < 1 || fish > 20 || !(massOfOne >= 0.0001 && massOfOne <= 50)) {
            throw new IllegalArgumentException("a new tank cannot be given " + fish + " fish of " + massOfOne
                    + " kg; it needs 1 to 20 of 0.0001 to 50 kg");
        }
        this.fish = fish;
        this.massOfOne = massOfOne;
        Variant empty = Variant.of(plan).empty().keptAt(temperature);
        Inhabitants shoal = new Inhabitants(
                List.of(new Inhabitants.Fish("fish", null, Amount.of(massOfOne, "kg"), fish, null, null)),
                List.of(),
                null,
                List.of(),
                null,
                null,
                null);
        Feeding meals = new Feeding(
                "food",
                Food.DRY_PELLET,
                Amount.of(RATION * massOfOne * fish / 2, "kg"),
                List.of(LocalTime.of(9, 0), LocalTime.of(18, 0)),
                null);
        List<Dosing> given =
                List.of(pulse(AMMONIUM, Salt.AMMONIUM_CHLORIDE), pulse(BICARBONATE, Salt.SODIUM_BICARBONATE));
        twin = SystemTwin.of(
                empty.living(shoal, List.of(meals)).dosed(given, empty.topOff()).plan());
        parameters = twin.network().usualParameters();
        Run fresh = new Run(twin.network(), parameters, filled(Seed.NONE), Accuracy.OF_A_YEAR);
        keptAlkalinity = Quantity.ALKALINITY.of(fresh.now(), twin);
    }

    /** A minute after midnight, when the keeper has looked. */
    private static Dosing pulse(String name, Salt salt) {
        return new Dosing(
                name,
                salt,
                Amount.of(STRENGTH, "g/L"),
                null,
                Amount.of(1, "mL/d"),
                Names.DISPLAY,
                List.of(LocalTime.of(0, 1)),
                null,
                null,
                null);
    }

    /**
     * The same tank with nitrifiers that grow so much faster, for they do not grow alike in any two tanks.
     *
     * @param factor on the growth of both guilds
     */
    public NewTank growing(@Unit("1") double factor) {
        double[] changed = parameters.clone();
        for (Parameter parameter : twin.network().parameters()) {
            if (parameter.name().endsWith("oxidisers, growth, factor")) {
                changed[parameter.index()] = factor;
            }
        }
        return new NewTank(twin, changed, fish, massOfOne, keptAlkalinity);
    }

    /** The twin it runs on. */
    public SystemTwin twin() {
        return twin;
    }

    /** Mass of ammonium chloride that brings so much ammonia, as nitrogen, into the water. */
    public @Unit("kg") double ammoniumChloride(@Unit("mg/L") double nitrogen) {
        return nitrogen * 1e-3 / NITROGEN * twin.volume() * Salt.AMMONIUM_CHLORIDE.molarMass();
    }

    /**
     * Begun without fish: brought to {@link #FIRST_DOSE}, and to the test dose on every day on which ammonia and nitrite are
     * found {@link #CLEAR}, until {@link #CLEARED_TWICE two} of these in succession were cleared within a day.
     *
     * @param testDose ammonia the later doses bring it to, as nitrogen
     */
    public Beginning fishless(Seed seed, @Unit("mg/L") double testDose, int days) {
        if (!(testDose >= 0.5 && testDose <= 4)) {
            throw new IllegalArgumentException(
                    "a test dose of " + testDose + " mg/L of nitrogen is not given; it needs 0.5 to 4");
        }
        Diary diary = new Diary(filled(seed), days);
        diary.stock(0);
        List<Integer> doses = new ArrayList<>();
        double ready = Double.POSITIVE_INFINITY;
        State atReady = null;
        double bicarbonate = 0;
        int cleared = 0;
        for (int day = 0; day < days; day++) {
            boolean clear = diary.ammonia() < CLEAR && diary.nitrite() < CLEAR;
            boolean within = clear && doses.size() > 1 && doses.get(doses.size() - 1) == day - 1;
            cleared = within ? cleared + 1 : 0;
            if (cleared >= CLEARED_TWICE && atReady == null) {
                ready = day;
                atReady = diary.state.copy();
                bicarbonate = diary.bicarbonate;
            }
            boolean dose = clear && atReady == null;
            diary.dose(dose ? (doses.isEmpty() ? FIRST_DOSE : testDose) - diary.ammonia() : 0);
            if (dose) {
                doses.add(day);
            }
            diary.nextDay();
        }
        return new Beginning(
                diary.course(), List.copyOf(doses), atReady == null ? diary.bicarbonate : bicarbonate, ready, atReady);
    }

    /** Begun with one of its fish, fed from the first day. */
    public Beginning firstFish(Seed seed, int days) {
        Diary diary = new Diary(filled(seed), days);
        diary.dose(0);
        diary.stock(1);
        State[] mornings = new State[days + 1];
        for (int day = 0; day < days; day++) {
            mornings[day] = diary.state.copy();
            diary.nextDay();
        }
        mornings[days] = diary.state.copy();
        double ready = Math.ceil(clearFrom(diary.course(), 1));
        return new Beginning(
                diary.course(),
                List.of(),
                diary.bicarbonate,
                ready,
                Double.isFinite(ready) ? mornings[(int) ready] : null);
    }

    /**
     * Stocked with all its fish.
     *
     * @param from the tank they come into, which holds none yet
     * @param apart days from each to the next; 0 for all at once
     */
    public Course stocked(State from, int apart, int days) {
        Diary diary = new Diary(from.copy(), days);
        diary.dose(0);
        diary.stock(apart == 0 ? fish : 1);
        for (int day = 0; day < days; day++) {
            if (apart > 0 && day % apart == 0) {
                diary.stock(Math.min(fish, 1 + day / apart));
            }
            diary.nextDay();
        }
        return diary.course();
    }

    /** All bodies on the day it is filled. */
    public State filled(Seed seed) {
        return twin.newlyFilled(parameters, seed.seeding.ammoniaOxidisers(), seed.seeding.nitriteOxidisers());
    }

    /** First day from which ammonia and nitrite stay clear; infinite where they are not at the end. */
    public static @Unit("d") double clearFrom(Course course, @Unit("d") double notBefore) {
        double[] ammonia = course.of(Quantity.AMMONIA);
        double[] nitrite = course.of(Quantity.NITRITE);
        int i = ammonia.length;
        while (i > 0 && ammonia[i - 1] < CLEAR && nitrite[i - 1] < CLEAR) {
            i--;
        }
        return i == ammonia.length ? Double.POSITIVE_INFINITY : Math.max(notBefore, course.time()[i] / DAY);
    }

    /** A run and what was noted of it. */
    private final class Diary {
        private final State state;
        private final Run run;
        private final double[] times;
        private final Map<Quantity, double[]> values = new EnumMap<>(Quantity.class);
        private int day;
        private int present;
        private double bicarbonate;

        Diary(State state, int days) {
            if (days < 1 || days > 400) {
                throw new IllegalArgumentException("a new tank is followed for 1 to 400 days, not " + days);
            }
            this.state = state;
            run = new Run(twin.network(), parameters, state, Accuracy.OF_A_YEAR).keepAccount();
            times = new double[days * SAMPLES + 1];
            for (int i = 0; i < times.length; i++) {
                times[i] = i * DAY / SAMPLES;
            }
            TOLD.forEach(quantity -> values.put(quantity, new double[times.length]));
            note(0, run.now());
        }

        double ammonia() {
            return Quantity.AMMONIA.of(run.now(), twin);
        }

        double nitrite() {
            return Quantity.NITRITE.of(run.now(), twin);
        }

        /** Puts in as many fish as are missing, and feeds for all of them. */
        void stock(int wanted) {
            run.set(setting("added fish"), Math.max(0, wanted - present) * massOfOne);
            run.set(setting("feed"), (double) wanted / fish);
            present = wanted;
        }

        /** Doses so much ammonia nitrogen, mg/L, in the first minute of this day. */
        void dose(double nitrogen) {
            run.set(setting(AMMONIUM + " dose"), ammoniumChloride(nitrogen) / STRENGTH / DAY);
        }

        /** Brings alkalinity back where it is found low. */
        private void holdAlkalinity() {
            double lack = keptAlkalinity - Quantity.ALKALINITY.of(run.now(), twin);
            double mass =
                    lack > SLACK ? lack / DEGREES_PER_MOLE * twin.volume() * Salt.SODIUM_BICARBONATE.molarMass() : 0;
            bicarbonate += mass;
            run.set(setting(BICARBONATE + " dose"), mass / STRENGTH / DAY);
        }

        private Setting setting(String lever) {
            return twin.levers().get(lever).setting();
        }

        void nextDay() {
            double[] today = new double[SAMPLES];
            int first = day * SAMPLES + 1;
            System.arraycopy(times, first, today, 0, SAMPLES);
            day++;
            holdAlkalinity();
            run.until(day * DAY, today, (sample, now) -> note(first + sample, now));
        }

        private void note(int sample, View now) {
            values.forEach((quantity, samples) -> samples[sample] = quantity.of(now, twin));
        }

        Course course() {
            return new Course(times, values, List.copyOf(run.log()), run.account(), null);
        }
    }
}
