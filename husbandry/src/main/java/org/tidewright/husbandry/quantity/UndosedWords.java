package org.tidewright.husbandry.quantity;

import static org.tidewright.husbandry.advice.Sentence.figure;

import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.dosing.DoseRule;
import org.tidewright.plan.method.WaterQuantity;

/** Says how a quantity stands that is not dosed, and what moves it. */
final class UndosedWords {
    private final Situation seen;
    private final WaterQuantity quantity;
    private final Sources sources;
    private final String log;

    /**
     * Words about a situation.
     *
     * @param log the key of the journal in the sources
     */
    UndosedWords(Situation seen, Sources sources, String log) {
        this.seen = seen;
        quantity = seen.quantity();
        this.sources = sources;
        this.log = log;
    }

    Sentence sentence() {
        if (seen.range() == null) {
            return Sentence.of(
                    seen.capital() + " stands at ",
                    figure(Told.level(quantity, seen.level()), log),
                    seen.isWatched()
                            ? ". Compare " + seen.watched() + " with another test " + seen.by(seen.nextTest()) + "."
                            : ". Test it by " + seen.day(seen.nextTest()) + ".");
        }
        double outside = seen.chanceOutside(seen.level());
        if (seen.isOutside()) {
            boolean over = seen.isAbove();
            return Sentence.of(
                    act(over) + " It stands at ",
                    figure(Told.level(quantity, seen.level()), log),
                    over ? ", above " : ", below ",
                    seen.rangeWords(),
                    ".");
        }
        double chance = Math.max(outside, seen.chanceOutside(seen.next()));
        String test = seen.isWatched()
                ? "Compare " + seen.watched() + " with another test "
                : "Test " + quantity.words() + " again ";
        return Sentence.of(
                (chance <= DoseRule.TOO_LIKELY ? "Leave it as it is: " : test + seen.by(seen.nextTest()) + ": ")
                        + quantity.words() + " stands at ",
                figure(Told.level(quantity, seen.level()), log),
                ", and the chance that it is outside ",
                seen.rangeWords(),
                seen.isWatched() ? " now or tomorrow is " : " then is ",
                figure(Figure.exact(Measure.SHARE, Math.max(0.01, chance)), DoseWords.chance(sources)),
                ".");
    }

    /** What moves a quantity that is not dosed. */
    private String act(boolean over) {
        return switch (quantity) {
            case NITRATE, PHOSPHATE ->
                over
                        ? "Feed less or export more, one of them: Feed and export shows what each would do."
                        : "Feed a little more or export less: Feed and export shows what each would do.";
            case SALINITY ->
                over ? "Bring salinity down slowly with fresh water." : "Bring salinity up slowly with new water.";
            case TEMPERATURE ->
                over ? "Cool the water slowly, no ice." : "Warm the water slowly; look at the heaters first.";
            case PH -> "Look at the room's air before you touch the pH: the Day page shows what a window would do.";
            case AMMONIA, NITRITE -> "Feed nothing, change water, and find what died or which filter stopped.";
            case OXYGEN -> over ? "Nothing is wrong with much oxygen." : "Move the surface and find what stopped.";
            case ALKALINITY, CALCIUM, MAGNESIUM ->
                over
                        ? "Change water with less of it, in parts."
                        : "Dose it, or change water with more of it, in parts.";
        };
    }
}
