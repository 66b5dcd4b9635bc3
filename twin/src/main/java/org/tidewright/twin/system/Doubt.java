package org.tidewright.twin.system;

import org.tidewright.plan.source.Basis;
import org.tidewright.twin.contract.Declaration;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.law.nutrient.Spread;

/** Declares what is not known exactly, from the spread its law states. */
final class Doubt {
    private final Declaration declaration;

    Doubt(Declaration declaration) {
        this.declaration = declaration;
    }

    /** A number and its range. */
    Parameter of(String name, String unit, Spread spread, Basis basis, String source) {
        return declaration.parameter(name, unit, spread.usual(), spread.low(), spread.high(), basis, source);
    }

    /** A factor about one. */
    Parameter factor(String name, double low, double high, Basis basis, String source) {
        return declaration.parameter(name, "1", 1, low, high, basis, source);
    }

    /** A factor on the usual value of a constant, with the constant's own relative range. */
    Parameter factor(String name, Spread spread, Basis basis, String source) {
        return factor(name, spread.low() / spread.usual(), spread.high() / spread.usual(), basis, source);
    }
}
