package org.tidewright.app.cli;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.sheet.KnownField;
import org.tidewright.husbandry.sheet.KnownText;
import org.tidewright.husbandry.sheet.PhAdvice;
import org.tidewright.husbandry.sheet.SheetColumn;
import org.tidewright.husbandry.sheet.SheetSection;
import org.tidewright.husbandry.sheet.SheetText;
import org.tidewright.husbandry.sheet.WaterInAir;
import org.tidewright.husbandry.sheet.WaterSheet;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.carbonate.BoronRatio;
import org.tidewright.seawater.carbonate.CarbonicAcid;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** A water sheet on the terminal. */
final class SheetPrint {
    private static final int WORDS_WIDTH = 46;
    private static final int VALUE_WIDTH = 13;
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final Map<KnownField, String> typed;
    private final KnownText known;
    private final WaterSheet sheet;
    private final BoronRatio boron;
    private final Sources letters = new Sources();

    SheetPrint(Map<KnownField, String> typed, KnownText known, WaterSheet sheet, BoronRatio boron) {
        this.typed = typed;
        this.known = known;
        this.sheet = sheet;
        this.boron = boron;
    }

    void table(Prose prose, boolean all) {
        advice(prose);
        prose.line("Given");
        typed.forEach((field, text) -> prose.line(String.format(
                Locale.ROOT, "  %-" + WORDS_WIDTH + "s %" + VALUE_WIDTH + "s", capital(field.words()), text.strip())));
        for (SheetSection section : SheetSection.values()) {
            if (all || isForEveryone(section)) {
                section(prose, section);
            }
        }
        prose.blank();
        prose.line("Where these numbers come from");
        for (Source source : letters.all()) {
            prose.line("  " + source.key() + "  " + source.what());
        }
        prose.blank();
        notes(prose, all);
    }

    /** What to do about the pH, first. */
    private void advice(Prose prose) {
        Map<SheetColumn, Double> whole = new EnumMap<>(SheetColumn.class);
        whole.putAll(known.given());
        whole.putAll(sheet.computed());
        WaterInAir air = WaterInAir.of(known.given(), boron);
        PhAdvice advice = air == null ? null : PhAdvice.of(whole, air);
        if (advice != null) {
            prose.paragraph(advice.advice());
            prose.blank();
        }
    }

    /** Every number by the name of its column, given ones too. */
    String json() {
        ObjectNode root = JSON.createObjectNode();
        for (SheetColumn column : SheetColumn.values()) {
            Double value = sheet.computed().getOrDefault(column, known.given().get(column));
            if (value != null) {
                root.put(column.key(), value);
            }
        }
        root.put("boron", boron.citation());
        return root.toPrettyString();
    }

    private void section(Prose prose, SheetSection section) {
        boolean first = true;
        for (SheetColumn column : SheetColumn.values()) {
            Double given = known.given().get(column);
            Double value = sheet.computed().getOrDefault(column, given);
            if (column.section() != section || value == null || isToldElsewhere(column, value)) {
                continue;
            }
            if (first) {
                prose.blank();
                prose.line(section.title());
                first = false;
            }
            boolean isGiven = given != null && !sheet.computed().containsKey(column);
            SheetText.Told told = SheetText.of(column, value, UnitSystem.METRIC);
            prose.line(String.format(
                            Locale.ROOT,
                            "  %-" + WORDS_WIDTH + "s %" + VALUE_WIDTH + "s %-12s %s",
                            column.words(),
                            told.value(),
                            told.unit(),
                            isGiven ? "as given" : letters.key(column.source(), Basis.PUBLISHED, ""))
                    .stripTrailing());
        }
    }

    /** Species of nutrients nobody spoke of; and whether the constants hold, which is told as a caution. */
    private static boolean isToldElsewhere(SheetColumn column, double value) {
        return (column.section() == SheetSection.SPECIES && value == 0) || column == SheetColumn.WITHIN_LUEKER;
    }

    private void notes(Prose prose, boolean all) {
        Map<SheetColumn, Double> given = known.given();
        boolean placed =
                given.containsKey(SheetColumn.TEMPERATURE) && given.containsKey(SheetColumn.PRACTICAL_SALINITY);
        if (!placed) {
            prose.paragraph("Give temperature and salinity too: nearly everything follows from them.");
        } else if (!sheet.computed().containsKey(SheetColumn.BICARBONATE)) {
            long settled =
                    WaterSheet.SETTLING.stream().filter(given::containsKey).count();
            prose.paragraph(
                    "Give " + (settled == 0 ? "two" : "one more")
                            + " of alkalinity, inorganic carbon, pH and carbon dioxide: the carbonate system follows from two.");
        } else {
            prose.paragraph("Boron by " + boron.citation() + ", carbonic acid by "
                    + CarbonicAcid.LUEKER_2000.citation()
                    + ". A pH without its scale is uncertain by 0.15; a probe set with trade buffers reads near NBS.");
        }
        if (Double.valueOf(0).equals(sheet.computed().get(SheetColumn.WITHIN_LUEKER))) {
            prose.paragraph(
                    "Caution. The constants of carbonic acid were measured at salinities 19 to 43 and 2 to 35 °C;"
                            + " outside, what is told of carbon dioxide goes on smoothly but nobody vouches for it.");
        }
        if (!all) {
            prose.paragraph("--all adds what the water is made of and the constants used.");
        }
    }

    private static boolean isForEveryone(SheetSection section) {
        return section != SheetSection.SPECIES && section != SheetSection.TOTALS && section != SheetSection.CONSTANTS;
    }

    private static String capital(String words) {
        return words.equals("pH") ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
