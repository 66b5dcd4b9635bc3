package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
    private static final List<String> PAGES = List.of("Build", "New tank", "Day", "Rehearse", "Plan");
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
            links.add(new Chrome.Link("Systems", "/", page.equals("home")));
        } else {
            for (String name : PAGES) {
                String key = key(name);
                links.add(new Chrome.Link(name, href(here) + "/" + key, key.equals(page)));
            }
        }
        links.add(new Chrome.Link("Water desk", WATER_DESK, page.equals("water-desk")));
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

    /** How a page's address ends. */
    private static String key(String page) {
        return page.toLowerCase(Locale.ROOT).replace(' ', '-');
    }

    private String in(String units) {
        return path + "?" + (query.isEmpty() ? "" : query + "&") + "units=" + units;
    }

    static String href(SystemEntry system) {
        return "/systems/" + system.id();
    }

    /** {@code 486 L in circulation, plan revision 7}. */
    String facts(SystemEntry system) {
        Figure water = Figure.exact(Measure.VOLUME, system.water());
        return FigureText.of(water, units(system)).line() + " in circulation, plan revision " + system.revision();
    }
}
