package org.tidewright.husbandry.solution;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.tidewright.plan.model.Salt;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Salts weighed in and filled up to a volume.
 *
 * @param volume of the finished solution, at room temperature
 */
public record Recipe(List<Weighing> weighings, @Unit("m^3") double volume, Tools tools) {
    /** So much of a salt out of its bag. */
    public record Weighing(SoldSalt sold, @Unit("kg") double mass) {
        public Weighing {
            Bounds.positive(mass, "kg", "mass weighed in");
        }
    }

    /**
     * What is weighed and measured with.
     *
     * @param scale standard error of a weighing
     * @param jug standard error of the volume, as a share of it
     */
    public record Tools(@Unit("kg") double scale, @Unit("1") double jug) {
        /** No error of weighing or filling. */
        public static final Tools EXACT = new Tools(0, 0);

        /** A kitchen scale of 1 g and the mark of a jug; common practice. */
        public static final Tools KITCHEN = new Tools(0.5e-3, 0.01);

        public Tools {
            Bounds.notNegative(scale, "kg", "error of the scale");
            Bounds.within(jug, "1", 0, 0.5, "error of the jug", "is it in percent?");
        }
    }

    public Recipe {
        weighings = List.copyOf(weighings);
        Bounds.positive(volume, "m^3", "volume of the solution");
        if (weighings.isEmpty()) {
            throw new IllegalArgumentException("number of salts weighed in is 0; a recipe needs at least one");
        }
    }

    /**
     * For a wanted solution.
     *
     * @param shelf the salts as they are sold; what is not on it is taken for pure
     */
    public static Recipe toMake(Solution wanted, @Unit("m^3") double volume, Map<Salt, SoldSalt> shelf, Tools tools) {
        List<Weighing> weighings = new ArrayList<>();
        wanted.content().forEach((salt, amount) -> {
            SoldSalt sold = shelf.getOrDefault(salt, SoldSalt.pure(salt));
            if (sold.salt() != salt) {
                throw new IllegalArgumentException("the shelf has " + sold.words() + " where " + salt.words()
                        + " should stand; put each salt under its own name");
            }
            weighings.add(new Weighing(sold, sold.massHolding(amount * volume)));
        });
        return new Recipe(weighings, volume, tools);
    }

    /** What comes out of it: the inverse of {@link #toMake}. */
    public Solution solution() {
        Map<Salt, Double> content = new EnumMap<>(Salt.class);
        for (Weighing weighing : weighings) {
            content.merge(weighing.sold().salt(), weighing.sold().amountIn(weighing.mass()) / volume, Double::sum);
        }
        return new Solution(content);
    }

    /**
     * How strong it comes out, with the doubt of purity, scale and jug.
     *
     * <pre>s^2 = sum over salts of c_i^2 [(s_p/p)^2 + (s_m/m)^2] + (s_V/V)^2 c^2</pre>
     *
     * @source errors that do not depend on one another, to first order
     */
    public Strength strength(Supply supply) {
        double value = 0;
        double variance = 0;
        for (Weighing weighing : weighings) {
            SoldSalt sold = weighing.sold();
            double part = supply.of(sold.salt()) * sold.amountIn(weighing.mass()) / volume;
            value += part;
            variance += part
                    * part
                    * (Math.pow(sold.standardError() / sold.purity(), 2)
                            + Math.pow(tools.scale() / weighing.mass(), 2));
        }
        return new Strength(supply, value, Math.sqrt(variance + Math.pow(tools.jug() * value, 2)));
    }

    /**
     * Water to pour for the volume, about: the rest of the solution's mass, whatever is not the formula in the salts
     * counted as water. The mark on the jug decides.
     *
     * @param temperature of the finished solution, ITS-90
     */
    @Unit("kg")
    public double water(@Unit("degC") double temperature) {
        double salts = weighings.stream().mapToDouble(Weighing::mass).sum();
        return SolutionDensity.of(solution(), temperature) * volume - salts;
    }
}
