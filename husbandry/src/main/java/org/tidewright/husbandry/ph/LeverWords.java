package org.tidewright.husbandry.ph;

import java.util.List;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.plan.source.Basis;

/** Tells what each lever would do. */
final class LeverWords {
    private static final double DAY = 86_400;
    private static final double WEEK = 7 * DAY;

    private final PhCase water;
    private final Sources sources;

    LeverWords(PhCase water, Sources sources) {
        this.water = water;
        this.sources = sources;
    }

    /** One sentence: what it is, and what it would do. */
    Sentence told(Lever lever) {
        Sentence doing = doing(lever);
        String needs = lever.needs(water);
        if (!needs.isEmpty()) {
            return Sentence.of(doing, ": what it would do cannot be told without " + needs + ".");
        }
        Effect effect = lever.on(water);
        if (lever instanceof Lever.MoreAlkalinity) {
            return Sentence.of(
                    "Do not chase pH with buffers: once the air has had its way, ",
                    doing,
                    " lifts the reading by only ",
                    Figure.exact(Measure.PH, effect.leastGain()),
                    ", to ",
                    ph(effect),
                    ", and stays in the water as alkalinity that nobody asked for.");
        } else if (effect.isBeyond()) {
            return Sentence.of(
                    doing,
                    " would go further than a balance can follow: if at all, by small steps and with an eye on the meter.");
        }
        return Sentence.of(doing, " would bring the reading to ", ph(effect), ", ", gain(effect), ".");
    }

    private Sentence.Part ph(Effect effect) {
        String key = sources.key(
                "Steady balance of carbon dioxide between water and air", Basis.COMPUTED, "all else staying as it is");
        return Sentence.figure(Figure.exact(Measure.PH, effect.ph()), key);
    }

    private Sentence gain(Effect effect) {
        double gain = effect.ph() - water.reading().ph();
        double least = Math.min(Math.abs(effect.leastGain()), Math.abs(effect.mostGain()));
        double most = Math.max(Math.abs(effect.leastGain()), Math.abs(effect.mostGain()));
        if (most < PhWords.SHOWS && !effect.isOpenEnded()) {
            return Sentence.of("a difference that no probe shows");
        }
        Figure size = most - least < 0.005
                ? Figure.exact(Measure.PH, Math.abs(gain))
                : Figure.between(Measure.PH, Math.abs(gain), least, most);
        return Sentence.of(size, gain >= 0 ? " more" : " less", effect.isOpenEnded() ? ", or still more" : "");
    }

    private Sentence doing(Lever lever) {
        if (lever instanceof Lever.Window window) {
            return Sentence.of("A room aired until it is at ", Figure.exact(Measure.SHARE_OF_AIR, window.share()));
        } else if (lever instanceof Lever.SkimmerAir air) {
            return Sentence.of(
                    isAbsorbed(air) ? "An absorber before the skimmer, its air at " : "Outdoor air to the skimmer, of ",
                    Figure.exact(Measure.SHARE_OF_AIR, air.share()),
                    " and ",
                    Figure.exact(Measure.SHARE, air.part()),
                    " of all exchange,");
        } else if (lever instanceof Lever.LimewaterInstead lime) {
            exchange();
            sources.key(
                    "Strength of saturated limewater",
                    Basis.PUBLISHED,
                    "0.0203 mol/L at 25 °C, Bates, Bower and Smith 1956");
            return Sentence.of(
                    "Saturated limewater, ",
                    Figure.exact(Measure.VOLUME, lime.flow() * DAY),
                    " a day in place of as much "
                            + (lime.replaced() == Lever.Replaced.BICARBONATE ? "bicarbonate," : "carbonate,"));
        } else if (lever instanceof Lever.AlgaeAtNight algae) {
            exchange();
            sources.key(
                    "Carbon in algae: 30 % of their dry mass, which is a tenth of the wet",
                    Basis.FROM_MEMORY, "within a third");
            return Sentence.of(
                    "Algae lit at night",
                    algae.movedFromDay() ? " and no longer by day, " : ", ",
                    Figure.exact(Measure.SMALL_MASS, algae.harvest() * WEEK),
                    " of them taken out a week,");
        } else if (lever instanceof Lever.MoreAlkalinity more) {
            return Sentence.of("a rise of ", Figure.exact(Measure.ALKALINITY, more.added()));
        }
        throw new IllegalArgumentException("no words for " + lever);
    }

    private static boolean isAbsorbed(Lever.SkimmerAir air) {
        return air.share() < 0.9 * OutdoorAir.SHARE;
    }

    private void exchange() {
        sources.key(
                "Exchange of carbon dioxide through the surface",
                Basis.FROM_MEMORY,
                "transfer velocities by how the surface looks; a factor of two either way");
    }

    /** What to mind while it is done. */
    static List<String> cautions(Lever lever) {
        if (lever instanceof Lever.LimewaterInstead) {
            return List.of(
                    "Limewater is caustic, pH above 12: goggles and gloves, out of reach of children; rinse an eye for"
                            + " fifteen minutes and see a doctor. Only the clear part, slowly into strong flow, never more in a"
                            + " day than evaporates, no dose that moves the pH by more than 0.1, none where a meter reads above"
                            + " 8.5.");
        } else if (lever instanceof Lever.SkimmerAir air && isAbsorbed(air)) {
            return List.of(
                    "Absorbent is caustic and its dust burns eyes and lungs: follow its label, keep it dry enough not"
                            + " to run into the skimmer, change it when its colour turns, and watch the pH while it is fresh.");
        } else if (lever instanceof Lever.SkimmerAir || lever instanceof Lever.Window) {
            return List.of(
                    "In frost outdoor air cools room and water: watch the heater. Keep it shut out while smoke, paint"
                            + " or insecticide is in it.");
        }
        return List.of();
    }
}
