package org.tidewright.husbandry.journal;

import java.time.Duration;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Salt;
import org.tidewright.seawater.unit.Unit;

/** What happened to a system at one time. */
public sealed interface Event {

    /**
     * One value was measured.
     *
     * @param written the number as it was read
     * @param unit what it was read in, one of the quantity's
     * @param method key among the methods of the quantity; null where it is not known how it was measured
     */
    record Reading(
            WaterQuantity quantity,
            @Unit("*") double written,
            QuantityUnit unit,
            @Nullable String method) implements Event {
        public Reading {
            Refusal.unless(quantity.units().contains(unit), quantity.words() + " is not read in " + unit.symbol());
            double held = unit.toHeld(written);
            Refusal.unless(
                    held >= quantity.least() && held <= quantity.most(),
                    quantity.words() + " of " + written + " " + unit.symbol() + " cannot be meant");
        }

        /** In the quantity's coherent unit. */
        public @Unit("*") double value() {
            return unit.toHeld(written);
        }
    }

    /**
     * A method was tried on a standard of known value.
     *
     * @param shown what it showed
     * @param standard what is right
     * @param standardError of what is right
     */
    record MethodChecked(
            WaterQuantity quantity,
            String method,
            QuantityUnit unit,
            @Unit("*") double shown,
            @Unit("*") double standard,
            @Unit("*") double standardError)
            implements Event {
        public MethodChecked {
            Refusal.unless(quantity.units().contains(unit), quantity.words() + " is not read in " + unit.symbol());
            Refusal.unless(
                    Double.isFinite(shown) && Double.isFinite(standard) && standardError >= 0,
                    "a check needs what was shown, what is right, and how sure that is");
        }
    }

    /**
     * Something was added to the water at once.
     *
     * @param solution its name, a dosing solution of the plan or the salt itself
     * @param salt what is in it; null where the keeper does not say
     * @param saltMass of it, with its water of crystallisation; null where it is not known
     * @param volume of the solution; null for a dry salt
     */
    record Dose(
            String solution,
            @Nullable Salt salt,
            @Nullable @Unit("kg") Double saltMass,
            @Nullable @Unit("m^3") Double volume)
            implements Event {
        public Dose {
            Refusal.unless(!solution.isBlank(), "a dose needs the name of what was dosed");
            Refusal.unlessPositive(saltMass, "mass of a dose");
            Refusal.unlessPositive(volume, "volume of a dose");
            Refusal.unless(saltMass != null || volume != null, "a dose needs a mass or a volume");
        }
    }

    /**
     * Water was taken out and as much new water put in.
     *
     * @param newWater what is known of the new water, in coherent units
     */
    record WaterChanged(
            @Unit("m^3") double volume, @Unit("*") Map<WaterQuantity, Double> newWater) implements Event {
        public WaterChanged {
            Refusal.unlessPositive(volume, "volume of a water change");
            newWater = Map.copyOf(newWater);
        }
    }

    /** The animals were fed. */
    record Fed(String food, @Unit("kg") double mass) implements Event {
        public Fed {
            Refusal.unless(!food.isBlank(), "a feeding needs the name of the food");
            Refusal.unlessPositive(mass, "mass of food");
        }
    }

    /**
     * Animals came or went.
     *
     * @param animal species or what the keeper calls it
     * @param length of one; null where it was not measured
     */
    record AnimalMoved(
            String animal,
            int count,
            Move move,
            @Nullable @Unit("m") Double length) implements Event {
        public AnimalMoved {
            Refusal.unless(!animal.isBlank(), "an animal needs a name");
            Refusal.unless(count > 0, "animals are counted from 1, not " + count);
            Refusal.unlessPositive(length, "length of an animal");
        }
    }

    /** How animals come and go. */
    enum Move {
        ARRIVED,
        LEFT,
        DIED
    }

    /** Something was cleaned, mended, refilled or set. */
    record WorkDone(String work, @Nullable Duration took) implements Event {
        public WorkDone {
            Refusal.unless(!work.isBlank(), "work needs to be named");
            Refusal.unless(took == null || !took.isNegative(), "work cannot take less than no time");
        }
    }

    /**
     * Something was seen.
     *
     * @param photo name under which {@link Photos} keeps it
     */
    record Observation(String seen, @Nullable String photo) implements Event {
        public Observation {
            Refusal.unless(!seen.isBlank() || photo != null, "an observation needs words or a photo");
        }
    }

    /**
     * The keeper moved a lever of the system.
     *
     * @param lever its name, as the twin of the plan calls it
     * @param unit coherent unit of its numbers
     * @param before where it stood; null where the plan said so
     * @param after where it stands now
     */
    record LeverMoved(
            String lever,
            String unit,
            @Nullable @Unit("*") Double before,
            @Unit("*") double after) implements Event {
        public LeverMoved {
            Refusal.unless(!lever.isBlank(), "a lever needs its name");
            Refusal.unless(Double.isFinite(after), "a lever needs where it stands now");
        }
    }

    /**
     * Animals were looked at closely, as every day in quarantine.
     *
     * @param animal which of them; null for all
     * @param breathsPerMinute beats of a gill cover, counted; null where nobody counted
     * @param signs of illness that were seen, none where all is well
     */
    record AnimalsChecked(
            @Nullable String animal,
            Appetite appetite,
            @Nullable Integer breathsPerMinute,
            Set<Sign> signs) implements Event {
        private static final int MOST_BREATHS = 400;

        public AnimalsChecked {
            Refusal.unless(animal == null || !animal.isBlank(), "an animal that is checked needs a name");
            Refusal.unless(
                    breathsPerMinute == null || (breathsPerMinute >= 0 && breathsPerMinute <= MOST_BREATHS),
                    breathsPerMinute + " breaths a minute cannot be meant; it must be 0 to " + MOST_BREATHS);
            signs = signs.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(signs));
        }
    }

    /** How they ate. */
    enum Appetite {
        ALL,
        SOME,
        NONE,
        NOT_FED
    }

    /**
     * Water or food was treated with a medicine. The journal keeps what was done and on whose word; no dose is ever worked
     * out from it.
     *
     * @param what the product, as its label calls it
     * @param volume of water it went into; null where it went into food
     * @param said what label or veterinarian said, in the keeper's words; null where that is not noted
     */
    record Treated(
            String what,
            Word word,
            @Nullable @Unit("m^3") Double volume,
            @Nullable String said) implements Event {
        public Treated {
            Refusal.unless(!what.isBlank(), "a treatment needs the name of what was given");
            Refusal.unlessPositive(volume, "volume of water that was treated");
            Refusal.unless(said == null || !said.isBlank(), "what was said needs words");
        }
    }

    /** On whose word a medicine is given. */
    enum Word {
        LABEL,
        VETERINARIAN
    }

    /** A display is kept without fish, so that a parasite of theirs starves in it. */
    record Fallow(Parasite parasite, Turn turn) implements Event {}

    /** What becomes of a fallow. */
    enum Turn {
        /** The last fish left. */
        BEGAN,
        /** Something wet or a fish came in: the days are counted anew. */
        BROKEN,
        /** It is over. */
        ENDED
    }
}
