package org.tidewright.plan.rule;

import java.time.LocalTime;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Algae;
import org.tidewright.plan.model.Display;
import org.tidewright.plan.model.Fan;
import org.tidewright.plan.model.Feeding;
import org.tidewright.plan.model.Gear;
import org.tidewright.plan.model.Light;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Sump;
import org.tidewright.plan.model.WaterChange;
import org.tidewright.plan.quantity.Amount;

/** How the system is run: feeding, water changes, light, algae, and what a piece of gear does. */
final class RegimeRules {
    private static final double DAY = 86400;

    private RegimeRules() {}

    static void check(Plan plan, Findings findings) {
        if (plan.room().carbonDioxide() != null && !plan.room().people().isEmpty()) {
            findings.add(
                    "room.carbon_dioxide",
                    plan.room().carbonDioxide().toString(),
                    "none where people are named: their breath and the air changes make it",
                    "Remove one of the two.");
        }
        for (int i = 0; i < plan.feeding().size(); i++) {
            Feeding feeding = plan.feeding().get(i);
            String path = "feeding[" + (i + 1) + "]";
            inOrderOfTheDay(path + ".times", feeding.times(), findings);
            wholeDays(path + ".every", feeding.every(), findings);
        }
        for (int i = 0; i < plan.waterChanges().size(); i++) {
            waterChange(plan.waterChanges().get(i), plan.display(), "water_changes[" + (i + 1) + "]", findings);
        }
        for (int i = 0; i < plan.lights().size(); i++) {
            ramp(plan.lights().get(i), "lights[" + (i + 1) + "].ramp", findings);
        }
        for (int i = 0; i < plan.fans().size(); i++) {
            band(plan.fans().get(i), "fans[" + (i + 1) + "].band", findings);
        }
        for (int i = 0; i < plan.gear().size(); i++) {
            String path = "gear[" + (i + 1) + "]";
            Gear gear = plan.gear().get(i);
            oneWork(gear, path, findings);
            if (gear.strains() != null) {
                wholeDays(path + ".strains.changed_every", gear.strains().changedEvery(), findings);
            }
        }
        List<Sump.Section> sections =
                plan.sump() == null ? List.of() : plan.sump().sections();
        for (int i = 0; i < sections.size(); i++) {
            harvest(sections.get(i).algae(), "sump.sections[" + (i + 1) + "].algae", findings);
        }
        if (plan.refugium() != null) {
            harvest(plan.refugium().algae(), "refugium.algae", findings);
        }
    }

    /** Reports the first time that does not come after the one before it. */
    static void inOrderOfTheDay(String path, List<LocalTime> times, Findings findings) {
        for (int i = 1; i < times.size(); i++) {
            LocalTime before = times.get(i - 1);
            if (!times.get(i).isAfter(before)) {
                findings.add(
                        path + "[" + (i + 1) + "]",
                        times.get(i).toString(),
                        "a time later than the one before, " + before,
                        "List the times of a day in their order, each once.");
                return;
            }
        }
    }

    static void wholeDays(String path, @Nullable Amount every, Findings findings) {
        if (every == null) {
            return;
        }
        double days = every.in("s") / DAY;
        if (Math.abs(days - Math.rint(days)) > 1e-9 * days) {
            findings.add(path, every.toString(), "a whole number of days, such as 1 d or 7 d", "");
        }
    }

    private static void waterChange(WaterChange change, Display display, String path, Findings findings) {
        wholeDays(path + ".every", change.every(), findings);
        double displayVolume = display.length().in("m")
                * display.width().in("m")
                * display.height().in("m");
        if (change.volume().in("m^3") > displayVolume) {
            findings.add(path + ".volume", change.volume().toString(), "no more than the display holds", "");
        }
    }

    private static void ramp(Light light, String path, Findings findings) {
        if (light.ramp() != null && 2 * light.ramp().in("s") > light.daily().in("s")) {
            findings.add(
                    path,
                    light.ramp().toString(),
                    "at most half of its hours a day, " + light.daily(),
                    "The light rises and falls within its hours.");
        }
    }

    private static void band(Fan fan, String path, Findings findings) {
        if (fan.band() != null && fan.setpoint() == null) {
            findings.add(path, "a band without a setpoint", "both or none", "Add the setpoint it comes on at.");
        }
    }

    private static void oneWork(Gear gear, String path, Findings findings) {
        long works = Stream.of(gear.skims(), gear.media(), gear.reactor(), gear.strains())
                .filter(Objects::nonNull)
                .count();
        if (works > 1) {
            findings.add(
                    path,
                    "more than one of skims, media, reactor and strains",
                    "at most one of them",
                    "Describe two devices, each with a name of its own.");
        }
    }

    private static void harvest(@Nullable Algae algae, String path, Findings findings) {
        if (algae != null && (algae.harvestedEvery() == null) != (algae.leftStanding() == null)) {
            findings.add(
                    path,
                    algae.leftStanding() == null ? "no key “left_standing”" : "no key “harvested_every”",
                    "harvested_every and left_standing together, or neither",
                    "");
        }
    }
}
