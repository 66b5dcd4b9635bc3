package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.desk.SystemEntry;

/**
 * Who reads, and where they stand.
 *
 * @param chosen the units they asked for; null for each plan's own
 * @param path of the page, without its query
 * @param query what stands after the question mark, without any choice of units; empty for nothing
 * @param assets address under which this build's files are served
 */
public record Reader(@Nullable UnitSystem chosen, String path, String query, String assets) {
    private static final List<String> PAGES = List.of(
            "Today",
            "Water",
            "Log",
            "Quarantine",
            "Mixing",
            "Solutions",
            "pH",
            "Life",
            "Shop",
            "Arrivals",
            "Corals",
            "Build",
            "New tank",
            "Day",
            "Feed and export",
            "Rehearse",
            "Plan");
    /** Four, beside the index: more would not be hit by a thumb. */
    private static final Set<String> AT_THUMB = Set.of("Today", "Log", "Water", "Rehearse");

    private static final String WATER_DESK = "/water-desk";

    /** The units to tell a system in. */
    public UnitSystem units(SystemEntry system) {
        return chosen == null ? system.units() : chosen;
    }

    /** The units to tell what belongs to no system in: those of the first system where none were asked for. */
    public UnitSystem units(List<SystemEntry> all) {
        if (chosen != null) {
            return chosen;
        }
        return all.isEmpty() ? UnitSystem.METRIC : all.get(0).units();
    }

    /** What stands around a page of a system. */
    Chrome around(String title, String page, int bars, List<SystemEntry> all, SystemEntry here) {
        return chrome(title, page, bars, all, here, units(here));
    }

    /** What stands around a page of no system. */
    Chrome around(String title, String page, List<SystemEntry> all) {
        return chrome(title, page, page.equals("water-desk") ? 20 : 24, all, null, units(all));
    }

    private Chrome chrome(
            String title, String page, int bars, List<SystemEntry> all, @Nullable SystemEntry here, UnitSystem units) {
        List<Chrome.Pick> picks = all.stream()
                .map(system -> new Chrome.Pick(
                        system.name(), facts(system), href(system) + "/" + pageOr(page), system.equals(here)))
                .toList();
        List<Chrome.Link> links = new ArrayList<>();
        if (here == null) {
            links.add(new Chrome.Link("Systems", "Systems", "/", page.equals("home"), true));
        } else {
            for (String name : PAGES) {
                String key = key(name);
                String shortName = name.split(" and ", 2)[0];
                links.add(new Chrome.Link(
                        name, shortName, href(here) + "/" + key, key.equals(page), AT_THUMB.contains(name)));
            }
        }
        links.add(new Chrome.Link("Water desk", "Water desk", WATER_DESK, page.equals("water-desk"), here == null));
        return new Chrome(
                title,
                page,
                bars,
                assets,
                picks,
                here == null ? "Systems" : here.name(),
                links,
                units == UnitSystem.US,
                in("metric"),
                in("us"));
    }

    private static String pageOr(String page) {
        return PAGES.stream().map(Reader::key).anyMatch(page::equals) ? page : "build";
    }

    /** {@code feed-and-export}, as it stands in addresses. */
    private static String key(String name) {
        return name.toLowerCase(Locale.ROOT).replace(' ', '-');
    }

    private String in(String units) {
        return path + "?" + (query.isEmpty() ? "" : query + "&") + "units=" + units;
    }

    public static String href(SystemEntry system) {
        return "/systems/" + system.id();
    }

    /** {@code 486 L in circulation, plan revision 7}. */
    String facts(SystemEntry system) {
        Figure water = Figure.exact(Measure.VOLUME, system.water());
        return FigureText.of(water, units(system)).line() + " in circulation, plan revision " + system.revision();
    }
}
