package org.tidewright.plan.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.tidewright.plan.model.AirPump;
import org.tidewright.plan.model.Backup;
import org.tidewright.plan.model.Chiller;
import org.tidewright.plan.model.CirculationPump;
import org.tidewright.plan.model.Dosing;
import org.tidewright.plan.model.Fan;
import org.tidewright.plan.model.Feeding;
import org.tidewright.plan.model.Gear;
import org.tidewright.plan.model.Heater;
import org.tidewright.plan.model.Light;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.WaterChange;

/** Names: each device and section has its own, and every name that is used exists. */
final class NameRules {
    private static final String A_PLACE = "a vessel or section";

    private NameRules() {}

    static void check(Plan plan, Findings findings) {
        List<String> places = Names.places(plan);
        List<String> vessels = Names.vessels(plan);
        List<String> sections = Names.sections(plan);
        twice(places, "sump", "sections and vessels", findings);
        twice(Names.devices(plan), "gear", "devices", findings);
        twice(plan.feeding().stream().map(Feeding::name).toList(), "feeding", "feedings", findings);
        twice(plan.dosing().stream().map(Dosing::name).toList(), "dosing", "dosed solutions", findings);
        twice(plan.waterChanges().stream().map(WaterChange::name).toList(), "water_changes", "water changes", findings);

        known(plan.gear(), Gear::standsIn, "gear[%d].stands_in", A_PLACE, places, findings);
        known(plan.heaters(), Heater::standsIn, "heaters[%d].stands_in", A_PLACE, places, findings);
        known(plan.chillers(), Chiller::standsIn, "chillers[%d].stands_in", A_PLACE, places, findings);
        known(plan.fans(), Fan::over, "fans[%d].over", A_PLACE, places, findings);
        known(plan.lights(), Light::over, "lights[%d].over", A_PLACE, places, findings);
        known(
                plan.circulationPumps(),
                CirculationPump::standsIn,
                "circulation_pumps[%d].stands_in",
                A_PLACE,
                places,
                findings);
        known(plan.airPumps(), AirPump::standsIn, "air_pumps[%d].stands_in", "a vessel", vessels, findings);
        known(plan.dosing(), Dosing::into, "dosing[%d].into", A_PLACE, places, findings);
        if (plan.overflow() != null) {
            for (int i = 0; i < plan.overflow().drains().size(); i++) {
                String into = plan.overflow().drains().get(i).into();
                if (into != null) {
                    findings.unknownName("overflow.drains[" + (i + 1) + "].into", into, "a sump section", sections);
                }
            }
        }
        if (plan.refugium() != null) {
            findings.unknownName("refugium.into", plan.refugium().into(), "a sump section", sections);
        }
        feeds(plan, findings);
    }

    /** Reports every item that names what does not exist; the path has a place for the item's number. */
    private static <T> void known(
            List<T> items,
            Function<T, String> name,
            String path,
            String kind,
            List<String> candidates,
            Findings findings) {
        for (int i = 0; i < items.size(); i++) {
            findings.unknownName(path.formatted(i + 1), name.apply(items.get(i)), kind, candidates);
        }
    }

    private static void feeds(Plan plan, Findings findings) {
        Backup backup = plan.backup();
        if (backup == null) {
            return;
        }
        List<String> devices = Names.devices(plan);
        if (backup.battery() != null) {
            for (String fed : backup.battery().feeds()) {
                findings.unknownName("backup.battery.feeds", fed, "a device", devices);
            }
        }
        if (backup.generator() != null) {
            for (String fed : backup.generator().feeds()) {
                findings.unknownName("backup.generator.feeds", fed, "a device", devices);
            }
        }
    }

    private static void twice(List<String> names, String path, String kind, Findings findings) {
        List<String> seen = new ArrayList<>();
        for (String name : names) {
            if (seen.contains(name)) {
                findings.add(path, "the name “" + name + "” twice", "a name of its own for each of the " + kind, "");
            }
            seen.add(name);
        }
    }
}
