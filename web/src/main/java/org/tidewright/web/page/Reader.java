package org.tidewright.web.page;

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
    private static final List<String> PAGES = List.of("Build", "Rehearse", "Plan");

    /** The units to tell a system in. */
    public UnitSystem units(SystemEntry system) {
        return chosen == null ? system.units() : chosen;
    }

    /** What stands around a page of a system. */
    Chrome around(String title, String page, int bars, List<SystemEntry> all, SystemEntry here) {
        return chrome(title, page, bars, all, here, units(here));
    }

    /** What stands around a page of no system. */
    Chrome around(String title, String page, List<SystemEntry> all) {
        UnitSystem units = chosen != null
                ? chosen
                : all.isEmpty() ? UnitSystem.METRIC : all.get(0).units();
        return chrome(title, page, 24, all, null, units);
    }

    private Chrome chrome(
            String title, String page, int bars, List<SystemEntry> all, @Nullable SystemEntry here, UnitSystem units) {
        List<Chrome.Pick> picks = all.stream()
                .map(system -> new Chrome.Pick(
                        system.name(), facts(system), href(system) + "/" + pageOr(page), system.equals(here)))
                .toList();
        List<Chrome.Link> links = here == null
                ? List.of()
                : PAGES.stream()
                        .map(name -> name.toLowerCase(Locale.ROOT))
                        .map(key -> new Chrome.Link(
                                key.substring(0, 1).toUpperCase(Locale.ROOT) + key.substring(1),
                                href(here) + "/" + key,
                                key.equals(page)))
                        .toList();
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
        return page.equals("rehearse") || page.equals("plan") ? page : "build";
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
