package org.tidewright.husbandry.nutrient;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.plan.source.Basis;
import org.tidewright.twin.forecast.Quantity;

/**
 * All that is told of a system's nutrients over twelve weeks.
 *
 * @param lead act first, then the reason
 * @param doubt how sure it is
 * @param positions where every handle stands, in the order of the plan's parts
 * @param flows one for each element; empty where the twin came to the end of its laws
 * @param curves nitrate, phosphate, ammonia
 * @param draws how many the bands of the curves stand on; 0 where there are none yet
 * @param unknowns what was not known exactly and matters here
 */
public record NutrientReport(
        Sentence lead,
        Sentence doubt,
        List<Position> positions,
        List<Flows> flows,
        List<NutrientCurve> curves,
        int draws,
        List<Unknown> unknowns,
        List<String> cautions,
        Keys keys,
        List<Source> sources) {

    /**
     * Letters of the sources that numbers rest on.
     *
     * @param course what the twin computed
     * @param food what is in the food
     * @param bands where keepers hold each nutrient
     */
    public record Keys(String course, String food, Map<Quantity, String> bands) {
        public String band(Quantity quantity) {
            return bands.getOrDefault(quantity, "");
        }
    }

    /**
     * Where a handle stands.
     *
     * @param value in the handle's shown unit
     */
    public record Position(Handle handle, double value) {
        public boolean isMoved() {
            return handle.isMoved(value);
        }
    }

    /**
     * Where an element goes.
     *
     * @param changed null without changes
     */
    public record Flows(
            Element element, FlowPicture asRun, @Nullable FlowPicture changed) {
        /** The picture to draw. */
        public FlowPicture drawn() {
            return changed == null ? asRun : changed;
        }
    }

    /** Something not known exactly, in a unit a keeper reads: usual, 5th and 95th of 100 draws. */
    public record Unknown(String name, String usual, String range, String unit, Basis basis, String detail) {}

    /** Whether anything was changed. */
    public boolean isChanged() {
        return positions.stream().anyMatch(Position::isMoved);
    }

    /** The flows of an element; null where there are none. */
    public @Nullable Flows of(Element element) {
        return flows.stream()
                .filter(each -> each.element() == element)
                .findFirst()
                .orElse(null);
    }
}
