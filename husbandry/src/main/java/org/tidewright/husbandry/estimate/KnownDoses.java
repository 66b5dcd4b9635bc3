package org.tidewright.husbandry.estimate;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.estimate.JournalInputs.JournalTime;
import org.tidewright.husbandry.estimate.Solution.Portion;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.water.SystemWater;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Dosing;
import org.tidewright.plan.model.Gear;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Salt;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.twin.law.carbonate.CalciumReactor;
import org.tidewright.twin.law.carbonate.Limewater;

/** What a plan and a journal tell of the doses. */
final class KnownDoses {
    /** What the twin calls a solution's lever, after its name, and a reactor's. */
    private static final String DOSE = " dose";

    private static final String EFFLUENT = " effluent";

    /** Strength of a mixed solution, the pump's volume and the water's: within a twentieth; the handbook, section 3.2. */
    private static final double STRENGTH_ERROR = 0.05;

    /** What evaporates is computed for ripples and a still room; the reservoir may not be saturated: a guess. */
    private static final double TOP_OFF_ERROR = 0.3;

    /** What leaves a usual reactor carries 15 to 40 dKH, from memory: within two fifths. */
    private static final double REACTOR_ERROR = 0.4;

    /** An electrode set with dilute buffers reads so much above the total scale in seawater; from memory, as in the twin. */
    private static final double METER_ABOVE_TOTAL = 0.13;

    private static final double DAY = 86_400;

    /** Molar masses in kg/mol, IUPAC standard atomic weights. */
    private static final double CALCIUM = 40.078e-3;

    private static final double MAGNESIUM = 24.305e-3;
    private static final double NITRATE = 62.0049e-3;
    private static final double NITROGEN = 14.0067e-3;
    private static final double PHOSPHATE = 94.9714e-3;

    /** Salt in seawater for each unit of practical salinity: 35.165 g/kg at 35, 1023.3 kg/m³ (TEOS-10; EOS-80 at 25 °C). */
    private static final double SALT_PER_SALINITY = 35.165e-3 / 35 * 1023.3;

    private final Plan plan;
    private final double volume;
    private final JournalTime time;
    private final List<String> notes;

    KnownDoses(Plan plan, double volume, JournalTime time, List<String> notes) {
        this.plan = plan;
        this.volume = volume;
        this.time = time;
        this.notes = notes;
    }

    /** As the plan has them, nothing moved. */
    private List<Solution> planned() {
        List<Solution> solutions = new ArrayList<>();
        for (Dosing dosing : plan.dosing()) {
            solutions.add(new Solution(
                    dosing.name(),
                    dosing.name() + DOSE,
                    effect(dosing.salt(), strength(dosing)),
                    shape(dosing),
                    List.of(new Portion(0, dosing.perDay().in("m^3/s") * DAY)),
                    List.of(),
                    STRENGTH_ERROR));
        }
        for (Gear gear : plan.gear()) {
            if (gear.reactor() != null) {
                solutions.add(reactor(gear.name(), gear.reactor()));
            }
        }
        Solution topOff = topOff();
        if (topOff != null) {
            solutions.add(topOff);
        }
        return solutions;
    }

    /** As the journal says they were given. */
    List<Solution> of(List<Line> lines) {
        Map<String, Solution> byName = new LinkedHashMap<>();
        planned().forEach(solution -> byName.put(solution.name(), solution));
        for (Line line : lines) {
            if (line.event() instanceof Event.LeverMoved moved) {
                byName.replaceAll((name, solution) ->
                        solution.lever().equals(moved.lever()) ? moved(solution, moved, time.of(line.at())) : solution);
            } else if (line.event() instanceof Event.Dose dose) {
                give(byName, dose, time.of(line.at()));
            }
        }
        return List.copyOf(byName.values());
    }

    private static Solution moved(Solution solution, Event.LeverMoved moved, double at) {
        List<Portion> programme = new ArrayList<>(solution.programme());
        if (programme.size() == 1 && moved.before() != null) {
            programme.set(0, new Portion(0, moved.before() * DAY));
        }
        programme.add(new Portion(at, moved.after() * DAY));
        return with(solution, programme, solution.pulses());
    }

    private void give(Map<String, Solution> byName, Event.Dose dose, double at) {
        Solution known = byName.get(dose.solution());
        if (known != null && dose.volume() != null) {
            byName.put(known.name(), pulsed(known, new Portion(at, dose.volume())));
        } else if (dose.salt() != null && dose.saltMass() != null) {
            // By the mole, beside a solution of that name, if there is one.
            String name = dose.salt().name().toLowerCase(java.util.Locale.ROOT);
            Solution dry = byName.getOrDefault(
                    name,
                    new Solution(
                            name, "", effect(dose.salt(), 1), DayShape.EVEN, List.of(), List.of(), STRENGTH_ERROR));
            byName.put(
                    name,
                    pulsed(dry, new Portion(at, dose.saltMass() / dose.salt().molarMass())));
        } else {
            String note = "Doses of “" + dose.solution()
                    + "” are not counted: neither the plan nor the journal says what is in it and how much."
                    + " What it brings is taken for a smaller use.";
            if (!notes.contains(note)) {
                notes.add(note);
            }
        }
    }

    private static Solution pulsed(Solution solution, Portion pulse) {
        List<Portion> pulses = new ArrayList<>(solution.pulses());
        pulses.add(pulse);
        return with(solution, solution.programme(), pulses);
    }

    private static Solution with(Solution solution, List<Portion> programme, List<Portion> pulses) {
        return new Solution(
                solution.name(),
                solution.lever(),
                solution.effect(),
                solution.shape(),
                programme,
                pulses,
                solution.strengthError());
    }

    private static DayShape shape(Dosing dosing) {
        if (!dosing.times().isEmpty()) {
            return DayShape.pulses(
                    dosing.times().stream().map(KnownDoses::ofDay).toList());
        }
        return dosing.from() == null || dosing.daily() == null
                ? DayShape.EVEN
                : DayShape.window(ofDay(dosing.from()), dosing.daily().in("s") / DAY, Double.POSITIVE_INFINITY);
    }

    private static double ofDay(LocalTime time) {
        return time.toSecondOfDay() / DAY;
    }

    private double strength(Dosing dosing) {
        if (dosing.saturation() != null) {
            return dosing.saturation().in("1")
                    * Limewater.saturated(plan.room().temperature().in("degC"));
        }
        return dosing.strength() == null
                ? 0
                : dosing.strength().in("kg/m^3") / dosing.salt().molarMass();
    }

    /**
     * What leaves a calcium reactor, by what a litre of it brings at the effluent of the plan: faster, each litre brings a
     * little less. The plan's water stands for that of the tank.
     */
    private Solution reactor(String name, Gear.Reactor reactor) {
        double flow = reactor.effluent().in("m^3/s");
        double saturated = CalciumReactor.at(
                        plan.water().temperature().in("degC"),
                        plan.water().salinity().in("1"))
                .saturatedAtPh(
                        reactor.chamberPh().in("1") - METER_ABOVE_TOTAL,
                        level(WaterQuantity.ALKALINITY, plan.water().alkalinity()),
                        level(WaterQuantity.CALCIUM, plan.water().calcium()),
                        CalciumReactor.MAGNESIUM_SHARE);
        double carbonate =
                CalciumReactor.supply(flow, reactor.mediaMass().in("kg"), CalciumReactor.RATE_USUAL, saturated) / flow;
        return new Solution(
                name,
                name + EFFLUENT,
                Map.of(
                        WaterQuantity.ALKALINITY, 2 * carbonate / volume,
                        WaterQuantity.CALCIUM, (1 - CalciumReactor.MAGNESIUM_SHARE) * carbonate * CALCIUM / volume,
                        WaterQuantity.MAGNESIUM, CalciumReactor.MAGNESIUM_SHARE * carbonate * MAGNESIUM / volume),
                DayShape.EVEN,
                List.of(new Portion(0, flow * DAY)),
                List.of(),
                REACTOR_ERROR);
    }

    private static double level(WaterQuantity quantity, @Nullable Amount stated) {
        return stated == null ? Priors.of(quantity).usualLevel().value() : stated.in(quantity.held());
    }

    /** Limewater that replaces what evaporates, no more than the reservoir holds from one filling to the next. */
    private @Nullable Solution topOff() {
        if (plan.topOff() == null
                || plan.topOff().limewater() == null
                || plan.topOff().limewater().in("1") == 0) {
            return null;
        }
        double room = plan.room().temperature().in("degC");
        double evaporated = SystemWater.evaporation(plan) * DAY;
        double held = plan.topOff().refilledEvery() == null
                ? evaporated
                : plan.topOff().reservoir().in("m^3")
                        / (plan.topOff().refilledEvery().in("s") / DAY);
        double strength = plan.topOff().limewater().in("1") * Limewater.saturated(room);
        return new Solution(
                "limewater in the top-off",
                "",
                effect(Salt.CALCIUM_HYDROXIDE, strength),
                DayShape.EVEN,
                List.of(new Portion(0, Math.min(evaporated, held))),
                List.of(),
                TOP_OFF_ERROR);
    }

    /**
     * Rise of each level by an amount of so many moles. Acetate counts as respired: the alkalinity that the acid takes is
     * back within hours.
     */
    private Map<WaterQuantity, Double> effect(Salt salt, double moles) {
        Map<WaterQuantity, Double> effect = new EnumMap<>(WaterQuantity.class);
        effect.put(WaterQuantity.ALKALINITY, salt.organicCarbon() > 0 ? 0 : salt.alkalinity());
        effect.put(WaterQuantity.CALCIUM, salt.calcium() * CALCIUM);
        effect.put(WaterQuantity.MAGNESIUM, salt.magnesium() * MAGNESIUM);
        effect.put(WaterQuantity.NITRATE, salt.nitrate() * NITRATE);
        effect.put(WaterQuantity.AMMONIA, salt.ammonia() * NITROGEN);
        effect.put(WaterQuantity.PHOSPHATE, salt.phosphate() * PHOSPHATE);
        effect.put(WaterQuantity.SALINITY, salt.seaSalt() / SALT_PER_SALINITY);
        effect.replaceAll((quantity, perMole) -> perMole * moles / volume);
        effect.values().removeIf(rise -> rise == 0);
        return effect;
    }
}
