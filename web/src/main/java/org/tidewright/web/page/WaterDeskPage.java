package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.sheet.KnownField;
import org.tidewright.husbandry.sheet.KnownText;
import org.tidewright.husbandry.sheet.PhAdvice;
import org.tidewright.husbandry.sheet.SheetColumn;
import org.tidewright.husbandry.sheet.SheetSection;
import org.tidewright.husbandry.sheet.SheetText;
import org.tidewright.husbandry.sheet.WaterInAir;
import org.tidewright.husbandry.sheet.WaterSheet;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.seawater.carbonate.CarbonicAcid;
import org.tidewright.seawater.range.FittedRange;
import org.tidewright.web.chart.AirChart;
import org.tidewright.web.chart.AirCurves;

/**
 * The water desk: a few numbers of any water in, all that follows from them out. It needs no system.
 *
 * @param refused whether something typed cannot be, so that nothing was computed
 * @param remark what was left out of account; empty for nothing
 */
public record WaterDeskPage(
        WaterForm form,
        String note,
        String lead,
        boolean refused,
        String remark,
        WaterHeads heads,
        @Nullable Picture picture,
        List<Section> sections,
        List<String> cautions,
        List<Source> sources) {

    /** The curves, with what was supposed for them. */
    public record Picture(Markup chart, AirCurves curves, String caption) {}

    /** Numbers that belong together. */
    public record Section(String key, String title, List<Line> lines) {
        public String count() {
            return lines.size() == 1 ? "one number" : lines.size() + " numbers";
        }
    }

    /** One number and where it comes from. */
    public record Line(String name, String value, String unit, String source) {}

    /** The page for what was typed. */
    public static WaterDeskPage of(WaterForm form, UnitSystem units) {
        if (form.faults() > 0) {
            String lead = form.faults() == 1
                    ? "Mend the marked field: nothing is computed before every number can be read."
                    : "Mend the " + form.faults()
                            + " marked fields: nothing is computed before every number can be read.";
            return refused(form, lead);
        }
        WaterSheet sheet;
        try {
            sheet = form.sheet();
        } catch (IllegalArgumentException impossible) {
            return refused(form, "Read again what you typed: no seawater has " + pair(form) + " at once.");
        }
        return worked(form, sheet, units);
    }

    private static WaterDeskPage refused(WaterForm form, String lead) {
        return new WaterDeskPage(
                form, note(form), lead, true, "", WaterHeads.NONE, null, List.of(), List.of(), List.of());
    }

    private static WaterDeskPage worked(WaterForm form, WaterSheet sheet, UnitSystem units) {
        Map<SheetColumn, Double> all = all(form.known(), sheet);
        WaterInAir air = WaterInAir.of(form.known().given(), form.boron());
        PhAdvice own = air == null ? null : PhAdvice.of(all, air);
        WaterHeads heads = WaterHeads.of(form, all);
        return new WaterDeskPage(
                form,
                note(form),
                own == null ? wanting(form, air) : own.advice(),
                false,
                remark(form.known(), sheet),
                heads,
                air == null ? null : picture(air, own, units),
                sections(all, sheet.used(), units),
                cautions(air, units),
                heads.sources(air != null));
    }

    private static String note(WaterForm form) {
        return form.example()
                ? "A worked example: type your own numbers over it"
                : "From a few numbers of any water, all that follows";
    }

    /** What was typed of the pair, within a sentence. */
    private static String pair(WaterForm form) {
        return form.typed().entrySet().stream()
                .filter(entry -> WaterSheet.SETTLING.contains(entry.getKey().column()))
                .limit(2)
                .map(entry -> (entry.getKey() == KnownField.PH
                                ? "a pH of "
                                : entry.getKey().words() + " of ")
                        + entry.getValue())
                .collect(Collectors.joining(" and "));
    }

    private static String wanting(WaterForm form, @Nullable WaterInAir air) {
        List<KnownField> settling = form.typed().keySet().stream()
                .filter(field -> WaterSheet.SETTLING.contains(field.column()))
                .toList();
        String four = "alkalinity, inorganic carbon, pH and carbon dioxide";
        if (air == null) {
            return "Type temperature and salinity first, then two of " + four + ": any two settle the rest.";
        } else if (settling.isEmpty()) {
            return "Type two of " + four + ": any two settle the rest.";
        }
        String which = WaterForm.capitalised(settling.get(0)) + " alone ";
        String act = "Type one more of " + four + ". " + which;
        return switch (settling.get(0)) {
            case ALKALINITY ->
                act + "leaves the pH open: the curves show it for the air the water may be at rest with.";
            case PH -> act + "settles how poisonous ammonia is, but not why the pH is what it is.";
            default -> act + "leaves the pH open.";
        };
    }

    /** Every number there is, whether computed or given. */
    private static Map<SheetColumn, Double> all(KnownText known, WaterSheet sheet) {
        Map<SheetColumn, Double> all = new EnumMap<>(SheetColumn.class);
        all.putAll(sheet.computed());
        known.given().forEach((column, value) -> {
            if (sheet.used().contains(column)) {
                all.put(column, value);
            }
        });
        return all;
    }

    private static String remark(KnownText known, WaterSheet sheet) {
        boolean settled =
                WaterSheet.SETTLING.stream().filter(sheet.used()::contains).count() == 2;
        List<String> unused = new ArrayList<>();
        for (KnownField field : KnownField.values()) {
            // Of a single one of the four the sentence above speaks.
            boolean told = !settled && WaterSheet.SETTLING.contains(field.column());
            if (known.given().containsKey(field.column()) && !sheet.used().contains(field.column()) && !told) {
                unused.add(field.words());
            }
        }
        if (unused.isEmpty()) {
            return "";
        }
        return "Not looked at: " + String.join(" and ", unused)
                + (settled ? ". Two settle the rest; where more are typed, the first two do." : ".");
    }

    private static Picture picture(WaterInAir air, @Nullable PhAdvice own, UnitSystem units) {
        AirCurves curves = AirPicture.curves(air, own);
        String caption = "At " + degrees(air.temperature(), units) + " and a salinity of "
                + SheetText.plain(air.salinity()) + ". Each curve is water at rest with air of that much CO₂: up the"
                + " curve by dosing, from curve to curve by air. pH is on the NBS scale, which trade buffers set a"
                + " probe to; a probe may stand 0.05 off it."
                + (own != null && !own.isOrdinary() ? " Your water lies outside the picture." : "");
        return new Picture(new Markup(AirChart.of(curves)), curves, caption);
    }

    private static String degrees(double temperature, UnitSystem units) {
        SheetText.Told told = SheetText.of(SheetColumn.TEMPERATURE, temperature, units);
        String value = told.value();
        return (value.contains(".") ? value.replaceAll("\\.?0+$", "") : value) + "\u00a0" + told.unit();
    }

    private static List<Section> sections(Map<SheetColumn, Double> all, Set<SheetColumn> given, UnitSystem units) {
        List<Section> sections = new ArrayList<>();
        for (SheetSection section : SheetSection.values()) {
            List<Line> lines = new ArrayList<>();
            all.forEach((column, value) -> {
                // Whether the constants are in range is told as a caution.
                if (column.section() == section && column != SheetColumn.WITHIN_LUEKER) {
                    SheetText.Told told = SheetText.of(column, value, units);
                    String source = given.contains(column) ? "what you typed" : column.source();
                    lines.add(new Line(column.words(), told.value(), told.unit(), source));
                }
            });
            if (!lines.isEmpty()) {
                sections.add(new Section(section.name().toLowerCase(Locale.ROOT), section.title(), lines));
            }
        }
        return sections;
    }

    private static List<String> cautions(@Nullable WaterInAir air, UnitSystem units) {
        FittedRange fit = CarbonicAcid.LUEKER_2000.fit();
        if (air == null || fit.covers(air.temperature(), air.salinity())) {
            return List.of();
        }
        return List.of("The constants of carbonic acid were measured from " + degrees(fit.coldest(), units) + " to "
                + degrees(fit.hottest(), units) + " and salinity " + FigureText.number(fit.freshest(), 0) + " to "
                + FigureText.number(fit.saltiest(), 0)
                + ". Your water lies outside: take its pH, carbon dioxide and saturation for a rough guide, and do not"
                + " dose by them.");
    }
}
