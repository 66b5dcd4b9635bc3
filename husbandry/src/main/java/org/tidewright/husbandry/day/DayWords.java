package org.tidewright.husbandry.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.forecast.AssumedAir;
import org.tidewright.plan.source.Basis;
import org.tidewright.twin.forecast.UsualDay;
import org.tidewright.twin.forecast.UsualDay.Lime;

/** Tells a day. */
public final class DayWords {
    /** Least change of pH that a well-kept probe shows. */
    private static final double SHOWS = 0.05;

    /** Lowest pH on a meter that corals are kept at without a thought; common practice 7.8 to 8.4. */
    private static final double EASY = 7.9;

    /** Lowest share of saturation that asks for nothing; common practice. */
    private static final double BREATHES = 80;

    private DayWords() {}

    /** A time of day, {@code 06:30}. */
    public static String clock(double seconds) {
        long minutes = Math.round(seconds / 60) % (24 * 60);
        return String.format(Locale.ROOT, "%02d:%02d", minutes / 60, minutes % 60);
    }

    /** pH, two decimals. */
    public static String ph(double ph) {
        return FigureText.number(ph, 2);
    }

    /** As a meter shows it. */
    private static String meter(double ph) {
        return ph(ph + DayStudy.METER);
    }

    /** Carbon dioxide, to ten. */
    public static String gas(double microatmospheres) {
        return FigureText.number(Math.rint(microatmospheres / 10) * 10, 0);
    }

    static String lead(DayStudy study) {
        return study.changed() == null ? asPlanned(study) : tried(study, study.changed());
    }

    private static String asPlanned(DayStudy study) {
        DayFigures day = study.planned();
        double fromRoom = day.room().mean() - study.outdoors();
        double fromTank = day.water().mean() - day.room().mean();
        String numbers = "your meter would read " + meter(day.ph().low()) + " at "
                + clock(day.ph().lowAt()) + " and " + meter(day.ph().high()) + " at "
                + clock(day.ph().highAt()) + ".";
        if (day.saturation().low() < BREATHES) {
            return "Stir the surface at night: oxygen falls to "
                    + FigureText.number(day.saturation().low(), 0) + "\u00a0% of saturation at "
                    + clock(day.saturation().lowAt())
                    + ", so the tank breathes more than its surface lets in and out; " + numbers;
        }
        double gainWindow = study.window().ph().low() - day.ph().low();
        if (fromRoom > fromTank && gainWindow > SHOWS) {
            return "Open a window in the evening: the room's carbon dioxide, not alkalinity, holds the pH down. From "
                    + clock(DayStudy.EVENING) + " for three hours it lifts the lowest reading of the day from "
                    + meter(day.ph().low()) + " to "
                    + meter(study.window().ph().low()) + ".";
        }
        double gainNight = study.night().ph().low() - day.ph().low();
        if (day.ph().low() + DayStudy.METER < EASY && fromTank > 100) {
            String lime = gainNight > SHOWS
                    ? " Limewater at night would make the lowest "
                            + meter(study.night().ph().low()) + "."
                    : "";
            return "Move more air over the water at night: the tank's own breath, not alkalinity, holds the pH down; "
                    + numbers + lime;
        }
        return "Leave the pH alone: it swings by " + ph(day.ph().swing()) + " with light and breath, as a reef's does; "
                + numbers;
    }

    private static String tried(DayStudy study, DayFigures changed) {
        String what = String.join(", ", study.tried());
        double gain = changed.ph().low() - study.planned().ph().low();
        String numbers = "the lowest reading of the day is "
                + meter(changed.ph().low()) + " in place of "
                + meter(study.planned().ph().low()) + ", the swing "
                + ph(changed.ph().swing()) + " in place of "
                + ph(study.planned().ph().swing()) + ".";
        if (changed.saturation().low()
                < Math.min(BREATHES, study.planned().saturation().low() - 3)) {
            return "Do not change to it: with " + what + " oxygen falls to "
                    + FigureText.number(changed.saturation().low(), 0) + "\u00a0% of saturation; " + numbers;
        } else if (gain > SHOWS) {
            return "Do it: with " + what + " " + numbers;
        } else if (gain < -SHOWS) {
            return "Do not do it for the pH: with " + what + " " + numbers;
        }
        return "Leave it as it is, as far as pH goes: with " + what + " " + numbers
                + " A probe cannot tell the two apart.";
    }

    static String buffers(DayStudy study) {
        double least = Math.min(study.moreAlkaline()[0], study.moreAlkaline()[1]);
        double most = Math.max(study.moreAlkaline()[0], study.moreAlkaline()[1]);
        String gain = ph(least).equals(ph(most)) ? ph(least) : ph(least) + "–" + ph(most);
        return "Do not chase pH with buffers: once the air has had its way, one dKH more lifts it by only " + gain
                + ". The same water at rest with outdoor air of " + FigureText.number(study.outdoors(), 0)
                + "\u00a0ppm would read "
                + meter(study.fresh()) + " on a meter, at "
                + FigureText.number(study.planned().alkalinity(), 1)
                + "\u00a0dKH. Set alkalinity by what corals need, and pH by air.";
    }

    static List<String> remarks(DayStudy study) {
        List<String> remarks = new ArrayList<>();
        AssumedAir.of(study.plan().room()).ifPresent(remarks::add);
        DayFigures day = study.changed() == null ? study.planned() : study.changed();
        double fromRoom = day.room().mean() - study.outdoors();
        double fromTank = day.water().mean() - day.room().mean();
        remarks.add("Of the water's " + gas(day.water().mean())
                + "\u00a0µatm of carbon dioxide on the mean of the day, "
                + FigureText.number(study.outdoors(), 0) + " is the outdoor air's, " + gas(Math.max(0, fromRoom))
                + " the room adds, and "
                + (fromTank >= 0
                        ? gas(fromTank) + " the tank itself."
                        : "corals and algae take " + gas(-fromTank) + " away."));
        if (study.changed() != null
                && Math.abs(study.changed().alkalinity() - study.planned().alkalinity()) > 0.2) {
            remarks.add(
                    "Alkalinity stands at " + FigureText.number(study.changed().alkalinity(), 1)
                            + "\u00a0dKH after the week in place of "
                            + FigureText.number(study.planned().alkalinity(), 1)
                            + (study.changed().alkalinity() < study.planned().alkalinity()
                                    ? ": where pH is higher corals use more of it, so test, and follow with the dose."
                                    : ": what is tried brings more of it, and part of the rise of pH is that."));
        }
        if (study.habits().lime() == Lime.AT_NIGHT
                && study.changed() != null
                && study.changed().day().limewater() > 0) {
            remarks.add("Reckoned with "
                    + FigureText.number(study.changed().day().limewater() * 86_400e3, 2)
                    + "\u00a0L of saturated limewater a night; other alkalinity doses are cut down by what it brings.");
        } else if (study.habits().lime() == Lime.NONE && study.changed() != null) {
            remarks.add("Bicarbonate is dosed in place of the limewater, as much alkalinity, spread over the day.");
        }
        return remarks;
    }

    static List<String> cautions(DayStudy study) {
        List<String> cautions = new ArrayList<>();
        boolean lime = study.habits().lime() == Lime.AT_NIGHT
                || (study.habits().lime() == Lime.AS_PLANNED && UsualDay.hasLimewater(study.plan()))
                || lead(study).contains("Limewater at night");
        if (lime) {
            cautions.add("Limewater is caustic, pH 12.4: goggles and gloves, out of reach of children; rinse an eye for"
                    + " fifteen minutes and see a doctor. Dose the clear part only, slowly into strong flow, never more in a"
                    + " day than evaporates, and stop it where a meter reads above 8.5.");
        }
        if (study.habits().windowLasts() > 0 || lead(study).startsWith("Open a window")) {
            cautions.add("In frost an open window cools the room and the water: watch the heater's duty on the first"
                    + " evenings. Keep the window shut where smoke, paint or insecticide is in the air.");
        }
        return cautions;
    }

    static List<Source> sources() {
        Sources sources = new Sources();
        sources.key(
                "Carbonic acid in seawater",
                Basis.PUBLISHED,
                "Lueker, Dickson and Keeling 2000; solubility of carbon dioxide Weiss 1974; boric acid Dickson 1990");
        sources.key(
                "A meter set with NBS buffers reads about 0.13 above the total scale",
                Basis.FROM_MEMORY,
                "0.09–0.15 by probe and salinity");
        sources.key("Breath of people in the room", Basis.PUBLISHED, "Persily and de Jonge 2017, for adults who sit");
        sources.key("Air changes with an open window, 5 an hour", Basis.COMMON_PRACTICE, "3–10 an hour");
        sources.key("Oxygen at saturation", Basis.PUBLISHED, "Garcia and Gordon 1992");
        sources.key(
                "Exchange of gases through the surface, breath of rock, sand, corals and fish",
                Basis.FROM_MEMORY,
                "each within a factor of two; your own meter decides");
        sources.key(
                "Strength of saturated limewater, 41 meq/L at 25 °C", Basis.PUBLISHED, "Bates, Bower and Smith 1956");
        sources.key("pH swings by 0.15–0.4 in reef tanks", Basis.COMMON_PRACTICE, "0.05–0.2 with algae lit at night");
        return sources.all();
    }
}
