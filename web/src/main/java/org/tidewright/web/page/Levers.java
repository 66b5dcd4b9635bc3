package org.tidewright.web.page;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.plan.model.Backup;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.rehearsal.OutageOrder;
import org.tidewright.twin.rehearsal.Outdoors;

/**
 * The levers of a rehearsal: what was asked, what of it can be, and what is wrong with the rest. A number that cannot be is
 * shown as it was typed, with the reason, and the usual value is rehearsed in its place.
 *
 * @param order what is rehearsed
 * @param hours as it stands in its field
 * @param outdoor as it stands in its field, in the reader's unit
 * @param outdoorName name of that field; it ends in the unit
 * @param airHole null where the return has none
 * @param backup null where the plan has none
 */
public record Levers(
        OutageOrder order,
        String hours,
        @Nullable String hoursFault,
        String outdoor,
        String outdoorName,
        String temperatureUnit,
        @Nullable String outdoorFault,
        @Nullable Choice airHole,
        @Nullable Choice backup) {

    /** Shortest and longest cut a page rehearses, hours. */
    private static final double SHORTEST = 1;

    private static final double LONGEST = 168;

    /** Weather a page rehearses, °C. */
    private static final double COLDEST = -40;

    private static final double WARMEST = 50;

    /** The values of a query, null where it has none. */
    public interface Query {
        @Nullable
        String get(String name);
    }

    /** Reads the levers from a query over the usual order. */
    public static Levers read(Query query, OutageOrder usual, Plan plan, UnitSystem units) {
        Measure.Unit degree = Measure.TEMPERATURE.unit(units);
        String name = "outdoor_" + degree.suffix();

        String hoursText = query.get("hours");
        Double hoursAsked = number(hoursText);
        boolean hoursFit = hoursAsked != null && hoursAsked >= SHORTEST && hoursAsked <= LONGEST;
        double hours = hoursFit && hoursAsked != null ? hoursAsked : usual.hours();

        double usualOutdoor = usual.outdoors().temperature()[0];
        String outdoorText = query.get(name);
        Double outdoorAsked = number(outdoorText);
        double asked = outdoorAsked == null ? usualOutdoor : (outdoorAsked - degree.zero()) / degree.factor();
        boolean outdoorFit = asked >= COLDEST && asked <= WARMEST;
        double outdoor = outdoorFit ? asked : usualOutdoor;

        Choice hole = BuildPage.hasAirHole(plan)
                ? Choice.read(
                        query,
                        "hole",
                        "Air hole in the return",
                        usual.airHolesClear() ? "clear" : "blocked",
                        List.of("clear", "clear", "blocked", "blocked"))
                : null;
        Choice backup = plan.backup() == null
                ? null
                : Choice.read(
                        query,
                        "backup",
                        words(plan.backup()),
                        usual.backupUsed() ? "yes" : "no",
                        List.of("no", "not used", "yes", "used"));
        return new Levers(
                new OutageOrder(
                        hours, Outdoors.constant(outdoor), !Choice.is(hole, "blocked"), Choice.is(backup, "yes")),
                shown(hoursText, hoursAsked, usual.hours()),
                hoursText == null || hoursText.isBlank() || hoursFit
                        ? null
                        : "from 1 to 168 hours; shown for " + plain(usual.hours()),
                shown(outdoorText, outdoorAsked, degree.shown(usualOutdoor)),
                name,
                degree.symbol(),
                outdoorText == null || outdoorText.isBlank() || (outdoorAsked != null && outdoorFit)
                        ? null
                        : "from " + told(degree.shown(COLDEST)) + " to "
                                + told(degree.shown(WARMEST)) + "; shown for "
                                + told(degree.shown(usualOutdoor)),
                hole,
                backup);
    }

    private static @Nullable Double number(@Nullable String text) {
        if (text == null || text.length() > 20) {
            return null;
        }
        try {
            double value = Double.parseDouble(text.strip().replace('\u2212', '-'));
            return Double.isFinite(value) ? value : null;
        } catch (NumberFormatException noNumber) {
            return null;
        }
    }

    /** What a field shows: what was typed, as far as a field for numbers can hold it. */
    private static String shown(@Nullable String typed, @Nullable Double number, double usual) {
        if (typed == null || typed.isBlank()) {
            return plain(usual);
        }
        return number == null ? "" : typed.strip();
    }

    private static String plain(double value) {
        double rounded = Math.rint(value * 10) / 10;
        return rounded == Math.rint(rounded)
                ? Long.toString((long) rounded)
                : String.format(Locale.ROOT, "%.1f", rounded);
    }

    /** As in a sentence; a field takes the plain form. */
    private static String told(double value) {
        return plain(value).replace('-', '\u2212');
    }

    private static String words(Backup backup) {
        if (backup.battery() != null && backup.generator() != null) {
            return "Battery and generator of the plan";
        }
        if (backup.battery() != null) {
            return "Battery of the plan, " + backup.battery().capacity();
        }
        return "Generator of the plan";
    }
}
