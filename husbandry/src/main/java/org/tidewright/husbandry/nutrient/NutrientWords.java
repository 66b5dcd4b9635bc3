package org.tidewright.husbandry.nutrient;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.plan.source.Basis;
import org.tidewright.twin.forecast.Quantity;

/** What the courses mean: act first, then the reason. */
final class NutrientWords {
    private static final String FEED = "feed";

    /** Phosphate may fall by this share in a week without harm to corals; common practice. */
    private static final double SAFE_FALL = 0.2;

    /** Shares a week that differ by less are alike. */
    private static final double NOISE = 0.03;

    /** What usual tests can tell apart, mg/L; common practice. */
    private static final double NITRATE_TELLABLE = 2;

    private static final double PHOSPHATE_TELLABLE = 0.03;

    /** Parts of a band's end by which one course must be nearer to its bands than another to be called better. */
    private static final double CLEARLY = 0.02;

    private final List<NutrientReport.Position> moved;
    private final boolean isFed;
    private final boolean hasMedium;
    private final NutrientCurve nitrate;
    private final NutrientCurve phosphate;
    private final boolean fishLoseWeight;
    private final @Nullable String brokenOff;
    private final String course;
    private final String food;
    private final Map<Quantity, String> bands = new EnumMap<>(Quantity.class);

    NutrientWords(
            List<NutrientReport.Position> positions,
            List<NutrientCurve> curves,
            boolean fishLoseWeight,
            @Nullable String brokenOff,
            Sources sources) {
        moved = positions.stream().filter(NutrientReport.Position::isMoved).toList();
        isFed = positions.stream()
                .anyMatch(position -> position.handle().lever().equals(FEED));
        hasMedium = positions.stream()
                .anyMatch(position -> position.handle().lever().endsWith(" mass"));
        nitrate = curve(curves, Quantity.NITRATE);
        phosphate = curve(curves, Quantity.PHOSPHATE);
        this.fishLoseWeight = fishLoseWeight;
        this.brokenOff = brokenOff;
        course = sources.key(
                "Courses and flows over twelve weeks",
                Basis.COMPUTED,
                "by the twin of your plan, from the water it states, at the usual values of what is not known exactly");
        food = sources.key("Nitrogen and phosphorus of the food", Basis.FROM_MEMORY, "product labels and food tables");
        curves.forEach(curve -> bands.put(curve.quantity(), band(curve, sources)));
        sources.key(
                "Phosphate should fall by no more than 20 % in a week",
                Basis.COMMON_PRACTICE, "corals lose tissue when it is stripped fast");
        sources.key(
                "Nitrate 1 mg/L is 0.226 mg/L of nitrogen, phosphate 1 mg/L is 0.326 mg/L of phosphorus",
                Basis.COMPUTED,
                "molar masses 62.004, 14.007, 94.970 and 30.974 g/mol");
    }

    private static NutrientCurve curve(List<NutrientCurve> curves, Quantity quantity) {
        return curves.stream()
                .filter(curve -> curve.quantity() == quantity)
                .findFirst()
                .orElseThrow();
    }

    private static String band(NutrientCurve curve, Sources sources) {
        TargetBand band = curve.band();
        String ends = (band.low() > 0 ? plain(band.low()) + " to " : "up to ") + plain(band.high()) + " mg/L";
        String name = curve.quantity().words();
        return sources.key(
                name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1) + " " + ends,
                band.basis(),
                band.basis() == Basis.YOUR_PLAN ? "your targets" : "where keepers hold it for " + band.whose());
    }

    private static String plain(double value) {
        String told = FigureText.number(value, 2);
        return told.replaceAll("\\.?0+$", "");
    }

    NutrientReport.Keys keys() {
        return new NutrientReport.Keys(course, food, bands);
    }

    Sentence lead() {
        if (brokenOff != null) {
            return Sentence.of(
                    Sentence.alarm("Do not let it come to this:"),
                    " before the twelve weeks are over the system is in a state the twin knows no law for.");
        }
        Sentence courses = moved.isEmpty() ? asItIs() : withChanges();
        return courses.then(bands());
    }

    private Sentence asItIs() {
        double high = Math.max(over(nitrate), over(phosphate));
        double low = Math.max(under(nitrate), under(phosphate));
        String act = !isFed
                ? "Write into the plan what is fed"
                : high > 0 && low > 0
                        ? "Change one thing at a time, and slowly"
                        : high > 0
                                ? "Feed less or take out more"
                                : low > 0 ? "Feed a little more or take out less" : "Leave the feed as it is";
        return Sentence.of(
                act + ": nitrate ", going(nitrate), " and phosphate ", going(phosphate), " in twelve weeks.");
    }

    private static double over(NutrientCurve curve) {
        return curve.end() > curve.band().high() ? curve.band().beyond(curve.end()) : 0;
    }

    private static double under(NutrientCurve curve) {
        return curve.end() < curve.band().low() ? curve.band().beyond(curve.end()) : 0;
    }

    /** {@code settles near 9 mg/L}, {@code rises to 59 mg/L and goes on rising}. */
    private Sentence going(NutrientCurve curve) {
        double moving = curve.moving();
        boolean goesOn = Math.abs(moving) > 0.06 * curve.end();
        String verb = !goesOn ? "settles near " : moving > 0 ? "rises to " : "falls to ";
        return Sentence.of(verb, Sentence.figure(figure(curve, curve.end()), course));
    }

    private Sentence withChanges() {
        Sentence effect = Sentence.of(
                "nitrate comes to ",
                Sentence.figure(figure(nitrate, nitrate.end()), course),
                " in place of ",
                figure(nitrate, nitrate.endAsRun()),
                " and phosphate to ",
                Sentence.figure(figure(phosphate, phosphate.end()), course),
                " in place of ",
                figure(phosphate, phosphate.endAsRun()));
        if (moved.size() > 1) {
            return Sentence.of("Move one thing at a time: with all ", told(moved.size()) + " moved ", effect, ".");
        }
        NutrientReport.Position one = moved.get(0);
        String name = "the " + lower(one.handle().words());
        String there = number(one, one.value());
        String leave = "Leave " + name + " at " + number(one, one.handle().planned()) + ": at " + there + " ";
        if (fishLoseWeight && one.handle().lever().equals(FEED)) {
            return Sentence.of(leave + "the fish lose weight; ", effect, ".");
        }
        if (!isTellable()) {
            return Sentence.of(leave + "no test could tell the difference in twelve weeks; ", effect, ".");
        }
        double better = beyond(false) - beyond(true);
        if (better < -CLEARLY) {
            return Sentence.of(leave, effect, ".");
        } else if (better < CLEARLY) {
            return Sentence.of("Set " + name + " as you like: at " + there + " ", effect, ".");
        }
        String act = fallsTooFast()
                ? "Bring " + name + " to " + there + " in small steps: there "
                : "Set " + name + " to " + there + ": ";
        return Sentence.of(act, effect, ".");
    }

    /** Whether the change makes phosphate fall faster than is safe, and faster than it does already. */
    private boolean fallsTooFast() {
        return phosphate.steepestFall() > SAFE_FALL && phosphate.steepestFall() > phosphate.steepestFallAsRun() + NOISE;
    }

    private static boolean isLessFood(NutrientReport.Position position) {
        return position.handle().lever().equals(FEED)
                && position.value() < position.handle().planned();
    }

    private static String percent(double share) {
        return FigureText.number(100 * share, 0) + "\u00a0%";
    }

    private boolean isTellable() {
        return Math.abs(nitrate.end() - nitrate.endAsRun()) >= NITRATE_TELLABLE
                || Math.abs(phosphate.end() - phosphate.endAsRun()) >= PHOSPHATE_TELLABLE;
    }

    /** How far both nutrients together are beyond their bands. */
    private double beyond(boolean withChanges) {
        return nitrate.band().beyond(withChanges ? nitrate.end() : nitrate.endAsRun())
                + phosphate.band().beyond(withChanges ? phosphate.end() : phosphate.endAsRun());
    }

    private Sentence bands() {
        boolean yours =
                nitrate.band().basis() == Basis.YOUR_PLAN || phosphate.band().basis() == Basis.YOUR_PLAN;
        return Sentence.of(
                (yours ? "You hold nitrate " : "Keepers of " + nitrate.band().whose() + " hold nitrate "),
                ends(nitrate),
                " and phosphate ",
                ends(phosphate),
                ".");
    }

    private Sentence ends(NutrientCurve curve) {
        Sentence.Part high =
                Sentence.figure(figure(curve, curve.band().high()), bands.getOrDefault(curve.quantity(), ""));
        return curve.band().low() > 0
                ? Sentence.of("between " + plain(curve.band().low()) + " and ", high)
                : Sentence.of("under ", high);
    }

    Sentence doubt(int draws) {
        String run = "one run at the usual values of what is not known exactly";
        String told = draws > 0
                ? "Each curve is " + run + "; the light band tells where nine of ten of " + draws
                        + " draws lie as it is run"
                : "These curves have no band yet: they are " + run;
        return Sentence.of(told
                + ", so look at which way they go before you look at the figure. Weakest are the nitrogen gas of rock and"
                + " sand, which a controlled study did not find at all, what a skimmer takes, and how much phosphate rock"
                + " and sand hold. What corals grow of it is an estimate too; what the film on the rock takes up comes back and"
                + " is not counted.");
    }

    List<String> cautions() {
        List<String> cautions = new ArrayList<>();
        if (moved.size() > 1) {
            cautions.add(
                    "Never change two things at once: if something goes wrong, nobody can say which did it. Move one,"
                            + " wait until its half-way day has passed and your tests agree, then move the next.");
        }
        if (fishLoseWeight) {
            cautions.add(
                    "The fish get less than they burn and lose weight. No reading of the water is worth that: feed them"
                            + " and take out more instead.");
        } else if (moved.stream().anyMatch(NutrientWords::isLessFood)) {
            cautions.add(
                    "Feed less only while every fish keeps its weight: one that grows thin behind the head is underfed,"
                            + " whatever the water reads.");
        }
        if (!moved.isEmpty() && fallsTooFast()) {
            cautions.add("Phosphate falls by as much as " + percent(phosphate.steepestFall())
                    + " in a week here. More than 20 % a week harms corals (common practice): go there in small steps and"
                    + " measure before each.");
        } else if (phosphate.steepestFallAsRun() > SAFE_FALL) {
            cautions.add("As it is run, phosphate falls by as much as " + percent(phosphate.steepestFallAsRun())
                    + " in a week already. More than 20 % a week harms corals (common practice)"
                    + (hasMedium ? ": a fresh medium takes most, so exchange it by halves." : "."));
        }
        if (under(phosphate) > 0 && !moved.isEmpty()) {
            cautions.add(
                    "Phosphate ends under what keepers hold. Corals without phosphate pale and may die while nitrate"
                            + " is high: take out less before you feed less.");
        }
        return cautions;
    }

    static Figure figure(NutrientCurve curve, double milligramsPerLitre) {
        Measure measure = curve.quantity() == Quantity.NITRATE ? Measure.CONCENTRATION : Measure.TRACE;
        return Figure.exact(measure, milligramsPerLitre / 1000);
    }

    private static String number(NutrientReport.Position position, double value) {
        String told = FigureText.number(value, 1).replaceAll("\\.0$", "");
        return told + "\u00a0" + position.handle().symbol();
    }

    private static String told(int count) {
        return count == 2 ? "two" : count == 3 ? "three" : Integer.toString(count);
    }

    private static String lower(String words) {
        return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }
}
