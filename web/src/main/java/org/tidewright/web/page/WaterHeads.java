package org.tidewright.web.page;

import static org.tidewright.husbandry.advice.FigureText.number;
import static org.tidewright.web.drawing.SvgWriter.escaped;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.sheet.KnownText;
import org.tidewright.husbandry.sheet.PhAdvice;
import org.tidewright.husbandry.sheet.SheetColumn;
import org.tidewright.husbandry.sheet.SheetText;
import org.tidewright.husbandry.sheet.WaterSheet;
import org.tidewright.plan.source.Basis;

/**
 * The numbers a keeper comes to the water desk for, told large, each with the letter of its source.
 *
 * @param ranges whether some are told with a range, for a pH that may be off
 */
public record WaterHeads(List<Head> heads, boolean ranges, List<Source> lettered) {
    static final WaterHeads NONE = new WaterHeads(List.of(), false, List.of());

    /**
     * One of them.
     *
     * @param beside what belongs to it, told smaller; empty for nothing
     */
    public record Head(String name, Markup value, Markup beside) {}

    static WaterHeads of(WaterForm form, Map<SheetColumn, Double> all) {
        return new Writer(form, all).written();
    }

    /** The notes to the letters, and those the sentence and the picture rest on. */
    List<Source> sources(boolean picture) {
        List<Source> sources = new ArrayList<>(lettered);
        if (picture) {
            sources.add(new Source(
                    letter(sources.size()),
                    "The carbonate system, in the picture too: the constants of carbonic acid",
                    Basis.PUBLISHED,
                    "Lueker et al. 2000"));
            sources.add(new Source(
                    letter(sources.size()), "Fresh air: 420 ppm of CO₂, outdoors in the 2020s", Basis.FROM_MEMORY, ""));
            sources.add(new Source(
                    letter(sources.size()),
                    "A probe may stand 0.05 off the NBS scale, by the potential at its junction",
                    Basis.FROM_MEMORY,
                    ""));
        }
        return sources;
    }

    private static String letter(int index) {
        return String.valueOf((char) ('a' + index));
    }

    /** Writes the heads one after the other and gathers their sources. */
    private static final class Writer {
        private final Map<SheetColumn, Double> all;
        private final @Nullable Map<SheetColumn, Double> ifLower;
        private final @Nullable Map<SheetColumn, Double> ifHigher;
        private final List<Head> heads = new ArrayList<>();
        private final Map<String, List<String>> sources = new LinkedHashMap<>();

        Writer(WaterForm form, Map<SheetColumn, Double> all) {
            this.all = all;
            this.ifLower = shifted(form, -PhAdvice.PROBE_ERROR);
            this.ifHigher = shifted(form, PhAdvice.PROBE_ERROR);
        }

        WaterHeads written() {
            Double probe = all.get(SheetColumn.PH_NBS);
            if (probe != null) {
                String total = also(SheetColumn.PH_TOTAL, ph -> number(ph, 2), " on the total scale");
                head("pH on a probe", SheetColumn.PH_NBS, ph -> number(ph, 2), "", beside("NBS scale;", total));
            }
            head(
                    "Alkalinity",
                    SheetColumn.ALKALINITY_DKH,
                    degrees -> number(degrees, degrees < 100 ? 1 : 0),
                    "dKH",
                    beside(
                            also(SheetColumn.ALKALINITY_MEQ, meq -> number(meq, 2), "\u00a0meq/L,"),
                            also(SheetColumn.ALKALINITY_CACO3, mass -> number(mass, 0), "\u00a0mg/L CaCO₃;"),
                            also(SheetColumn.BORATE_SHARE, WaterHeads::percent, "\u00a0% of it borate")));
            head(
                    "CO₂, at rest with air of",
                    SheetColumn.SHARE_OF_DRY_AIR,
                    SheetText::ppm,
                    "ppm",
                    "dry air at 1\u00a0atm");
            head(
                    "Aragonite saturation Ω",
                    SheetColumn.ARAGONITE,
                    omega -> SheetText.significant(omega, 2),
                    "",
                    "corals’ mineral; dissolves below\u00a01");
            head(
                    "Ammonia in its poisonous form",
                    SheetColumn.NH3_SHARE,
                    WaterHeads::percent,
                    "%",
                    "un-ionised NH₃, of all ammonia");
            head(
                    "Inorganic carbon",
                    SheetColumn.INORGANIC_CARBON,
                    carbon -> ifLower == null ? number(carbon, 0) : SheetText.significant(carbon, 3),
                    "µmol/kg",
                    "CO₂, bicarbonate and carbonate");
            if (!all.containsKey(SheetColumn.SHARE_OF_DRY_AIR)) {
                salt();
            }
            List<Source> lettered = new ArrayList<>();
            sources.forEach((citation, names) -> lettered.add(
                    new Source(letter(lettered.size()), String.join(", ", names), Basis.PUBLISHED, citation)));
            return new WaterHeads(List.copyOf(heads), ifLower != null && ifHigher != null, lettered);
        }

        /** Without the carbonate system, what salinity and temperature alone tell. */
        private void salt() {
            head(
                    "Specific gravity",
                    SheetColumn.SPECIFIC_GRAVITY_25,
                    gravity -> number(gravity, 4),
                    "",
                    "water and reference at 25\u00a0°C");
            head("Conductivity", SheetColumn.CONDUCTIVITY, c -> number(c, 1), "mS/cm", "at its temperature");
            head("Oxygen at saturation", SheetColumn.OXYGEN_PER_VOLUME, o -> number(o, 2), "mg/L", "open to the air");
        }

        private void head(String name, SheetColumn column, DoubleFunction<String> told, String unit, String beside) {
            Double value = all.get(column);
            if (value == null) {
                return;
            }
            StringBuilder html = new StringBuilder("<span class=\"sounding\">").append(escaped(told.apply(value)));
            if (!unit.isEmpty()) {
                html.append("<span class=\"u\">").append(escaped(unit)).append("</span>");
            }
            html.append(range(column, told)).append(source(column, name)).append("</span>");
            heads.add(new Head(name, new Markup(html.toString()), Markup.words(beside)));
        }

        /** From the lower to the higher of what follows if the pH is off; nothing where that changes no digit. */
        private String range(SheetColumn column, DoubleFunction<String> told) {
            Double one = ifLower == null ? null : ifLower.get(column);
            Double other = ifHigher == null ? null : ifHigher.get(column);
            if (one == null || other == null || column == SheetColumn.PH_NBS || column == SheetColumn.ALKALINITY_DKH) {
                return "";
            }
            String low = told.apply(Math.min(one, other));
            String high = told.apply(Math.max(one, other));
            return low.equals(high) ? "" : " <span class=\"pm\">(" + escaped(low) + "–" + escaped(high) + ")</span>";
        }

        private String source(SheetColumn column, String name) {
            List<String> names = sources.computeIfAbsent(column.source(), citation -> new ArrayList<>());
            names.add(names.isEmpty() ? name : name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1));
            int index = List.copyOf(sources.keySet()).indexOf(column.source());
            String key = letter(index);
            return "<a class=\"src\" href=\"#source-" + key + "\" aria-label=\"source " + key + "\">" + key + "</a>";
        }

        private String also(SheetColumn column, DoubleFunction<String> told, String after) {
            Double value = all.get(column);
            return value == null ? "" : told.apply(value) + after;
        }

        private static String beside(String... parts) {
            return String.join(" ", parts).strip();
        }

        /** The sheet with the pH off by so much; null where no pH settles it, or no water is like that. */
        private static @Nullable Map<SheetColumn, Double> shifted(WaterForm form, double by) {
            KnownText known = form.known();
            Double ph = known.given().get(SheetColumn.PH_TOTAL);
            if (ph == null) {
                return null;
            }
            Map<SheetColumn, Double> given = new EnumMap<>(known.given());
            given.put(SheetColumn.PH_TOTAL, ph + by);
            try {
                WaterSheet sheet = WaterSheet.of(given, form.boron(), known.calcium());
                return sheet.used().contains(SheetColumn.PH_TOTAL) ? sheet.computed() : null;
            } catch (IllegalArgumentException impossible) {
                return null;
            }
        }
    }

    private static String percent(double share) {
        return SheetText.significant(100 * share, 2);
    }
}
