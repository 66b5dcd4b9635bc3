package org.tidewright.plan.rule;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.plan.model.Backup;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.model.Plan;

/** Names: each device and section has its own, and every name that is used exists. */
final class NameRules {
    private NameRules() {}

    static void check(Plan plan, Findings findings) {
        List<String> places = Names.places(plan);
        List<String> vessels = Names.vessels(plan);
        List<String> sections = Names.sections(plan);
        twice(places, "sump", "sections and vessels", findings);
        twice(Names.devices(plan), "gear", "devices", findings);

        for (int i = 0; i < plan.gear().size(); i++) {
            findings.unknownName(
                    "gear[" + (i + 1) + "].stands_in", plan.gear().get(i).standsIn(), "a vessel or section", places);
        }
        for (int i = 0; i < plan.heaters().size(); i++) {
            findings.unknownName(
                    "heaters[" + (i + 1) + "].stands_in",
                    plan.heaters().get(i).standsIn(),
                    "a vessel or section",
                    places);
        }
        for (int i = 0; i < plan.lights().size(); i++) {
            findings.unknownName(
                    "lights[" + (i + 1) + "].over", plan.lights().get(i).over(), "a vessel or section", places);
        }
        for (int i = 0; i < plan.circulationPumps().size(); i++) {
            findings.unknownName(
                    "circulation_pumps[" + (i + 1) + "].stands_in",
                    plan.circulationPumps().get(i).standsIn(),
                    "a vessel or section",
                    places);
        }
        for (int i = 0; i < plan.airPumps().size(); i++) {
            findings.unknownName(
                    "air_pumps[" + (i + 1) + "].stands_in",
                    plan.airPumps().get(i).standsIn(),
                    "a vessel",
                    vessels);
        }
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
