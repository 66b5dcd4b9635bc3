package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.nutrient.Element;
import org.tidewright.husbandry.nutrient.Handle;
import org.tidewright.plan.model.UnitSystem;

/**
 * What of a plan's nutrients was moved, and which element is looked at. A number that cannot be is refused with the reason,
 * and what the plan does is told in its place.
 *
 * @param values by key of the handle, those that were moved
 */
public record NutrientForm(List<Field> fields, Map<String, Double> values, Choice show) {
    /**
     * A handle with its value.
     *
     * @param value as it stands in its field
     * @param told the value with its unit, as a page writes it
     * @param plannedAt share of the slider at which the plan's value stands
     */
    public record Field(
            String key,
            String words,
            Markup about,
            String symbol,
            String least,
            String most,
            String step,
            String value,
            String told,
            String planned,
            String plannedAt,
            boolean moved,
            @Nullable String fault) {}

    /** Reads a query. */
    public static NutrientForm read(Levers.Query query, List<Handle> handles, UnitSystem units) {
        List<Field> fields = new ArrayList<>();
        Map<String, Double> values = new LinkedHashMap<>();
        for (Handle handle : handles) {
            String typed = query.get(handle.key());
            Double asked = number(typed);
            boolean fits = asked != null && asked >= handle.least() && asked <= handle.most();
            double value = fits && asked != null ? asked : handle.planned();
            if (handle.isMoved(value)) {
                values.put(handle.key(), value);
            }
            boolean faulty = typed != null && !typed.isBlank() && !fits;
            fields.add(new Field(
                    handle.key(),
                    handle.words(),
                    SentenceMarkup.of(handle.about(), units),
                    handle.symbol(),
                    plain(handle.least()),
                    plain(handle.most()),
                    plain(handle.step()),
                    plain(value),
                    plain(value) + "\u00a0" + handle.symbol(),
                    plain(handle.planned()),
                    Math.round(1e4 * (handle.planned() - handle.least()) / (handle.most() - handle.least())) / 100.0
                            + "%",
                    handle.isMoved(value),
                    faulty
                            ? "from " + plain(handle.least()) + " to " + plain(handle.most()) + " " + handle.symbol()
                                    + "; shown for " + plain(handle.planned())
                            : null));
        }
        Choice show = Choice.read(
                query, "show", "Follow", "nitrogen", List.of("nitrogen", "nitrogen", "phosphorus", "phosphorus"));
        return new NutrientForm(fields, values, show);
    }

    private static @Nullable Double number(@Nullable String text) {
        if (text == null || text.length() > 20) {
            return null;
        }
        try {
            double value = Double.parseDouble(text.strip());
            return Double.isFinite(value) ? value : null;
        } catch (NumberFormatException noNumber) {
            return null;
        }
    }

    private static String plain(double value) {
        String told = String.format(Locale.ROOT, "%.3f", value);
        return told.replaceAll("\\.?0+$", "");
    }

    public boolean isPhosphorus() {
        return Choice.is(show, "phosphorus");
    }

    /** The element that is looked at. */
    public Element element() {
        return isPhosphorus() ? Element.PHOSPHORUS : Element.NITROGEN;
    }

    public boolean isMoved() {
        return !values.isEmpty();
    }
}
