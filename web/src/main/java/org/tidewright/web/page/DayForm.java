package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.day.DayStudy;
import org.tidewright.husbandry.day.DayWords;
import org.tidewright.plan.model.Light;
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.forecast.UsualDay;
import org.tidewright.twin.forecast.UsualDay.Habits;
import org.tidewright.twin.forecast.UsualDay.Lime;

/**
 * The form of the day's page, and the habits it makes.
 *
 * @param start when the lights come on, as a time field shows it; null where the display has none
 * @param startFault what is wrong with it; null for nothing
 * @param algae when the lamp over the algae burns; null where there is none
 * @param tried what of the habits is not the plan's, in words
 */
public record DayForm(
        Choice lime,
        Choice window,
        @Nullable String start,
        @Nullable String startFault,
        @Nullable Entry hours,
        @Nullable Choice algae,
        Habits habits,
        List<String> tried) {
    private static final double DAY = 86_400;
    private static final double HOUR = 3600;
    private static final Pattern CLOCK = Pattern.compile("([01]?\\d|2[0-3]):([0-5]\\d)(?::\\d\\d)?");

    /** Reads it from a query over the plan's habits. */
    public static DayForm read(Levers.Query query, Plan plan, UsualDay twin) {
        List<String> tried = new ArrayList<>();
        Choice window = Choice.read(
                query,
                "window",
                "Window of the room",
                "shut",
                List.of("shut", "as planned", "evening", "open 19:00–22:00", "always", "open all day"));
        double from = 0;
        double lasts = 0;
        if (Choice.is(window, "evening")) {
            Habits evening = DayStudy.evening();
            from = evening.windowFrom();
            lasts = evening.windowLasts();
            tried.add("a window open from 19:00 to 22:00");
        } else if (Choice.is(window, "always")) {
            lasts = DAY;
            tried.add("a window open all day");
        }
        Choice lime = lime(query, plan, tried);

        List<Light> lights = UsualDay.overDisplay(plan);
        String start = null;
        String startFault = null;
        Entry hours = null;
        Double lightsStart = null;
        Double lightsLast = null;
        if (!lights.isEmpty()) {
            double usualStart = twin.startOf(lights.get(0));
            double usualHours = twin.hoursOf(lights.get(0)) / HOUR;
            String typed = query.get("lights_start");
            Double asked = seconds(typed);
            start = asked == null ? DayWords.clock(usualStart) : DayWords.clock(asked);
            startFault = typed == null || typed.isBlank() || asked != null
                    ? null
                    : "a time such as 09:30; reckoned with " + start;
            hours = Entry.read(query, "lights_hours", "for, hours", usualHours, 0, 24, false);
            boolean moved = asked != null && Math.abs(asked - usualStart) > 30;
            boolean longer = Math.abs(hours.value() - usualHours) > 0.05;
            if (moved || longer) {
                lightsStart = moved ? asked : (Double) usualStart;
                lightsLast = hours.value() * HOUR;
                tried.add("lights from " + start + " for " + Entry.plain(hours.value()) + " hours");
            }
        }
        Algae algae = Algae.read(query, plan, twin, tried);
        return new DayForm(
                lime,
                window,
                start,
                startFault,
                hours,
                algae.choice,
                new Habits(lime(lime), from, lasts, lightsStart, lightsLast, algae.start),
                List.copyOf(tried));
    }

    private static Choice lime(Levers.Query query, Plan plan, List<String> tried) {
        List<String> options = UsualDay.hasLimewater(plan)
                ? List.of("planned", "as planned", "night", "at night", "none", "none")
                : List.of("planned", "none", "night", "at night");
        Choice lime = Choice.read(query, "lime", "Limewater", "planned", options);
        if (Choice.is(lime, "night")) {
            tried.add("limewater at night");
        } else if (Choice.is(lime, "none")) {
            tried.add("bicarbonate in place of limewater");
        }
        return lime;
    }

    private static Lime lime(Choice lime) {
        return switch (lime.chosen()) {
            case "night" -> Lime.AT_NIGHT;
            case "none" -> Lime.NONE;
            default -> Lime.AS_PLANNED;
        };
    }

    /** The lamp over the algae: by night its middle is half a day from that of the display's lights. */
    private record Algae(@Nullable Choice choice, @Nullable Double start) {
        static Algae read(Levers.Query query, Plan plan, UsualDay twin, List<String> tried) {
            List<Light> lamps = UsualDay.overAlgae(plan);
            if (lamps.isEmpty()) {
                return new Algae(null, null);
            }
            Choice choice = Choice.read(
                    query,
                    "algae",
                    "Lamp over the algae",
                    "planned",
                    List.of("planned", "as planned", "night", "by night", "day", "by day"));
            if (Choice.is(choice, "planned")) {
                return new Algae(choice, null);
            }
            boolean night = Choice.is(choice, "night");
            List<Light> lights = UsualDay.overDisplay(plan);
            double noon = lights.isEmpty() ? DAY / 2 : twin.startOf(lights.get(0)) + twin.hoursOf(lights.get(0)) / 2;
            double middle = night ? noon + DAY / 2 : noon;
            double start = (middle - twin.hoursOf(lamps.get(0)) / 2 + 2 * DAY) % DAY;
            tried.add("the algae's lamp by " + (night ? "night" : "day"));
            return new Algae(choice, start);
        }
    }

    private static @Nullable Double seconds(@Nullable String clock) {
        Matcher matcher = CLOCK.matcher(clock == null ? "" : clock.strip());
        return matcher.matches()
                ? Integer.parseInt(matcher.group(1)) * HOUR + Integer.parseInt(matcher.group(2)) * 60
                : null;
    }
}
