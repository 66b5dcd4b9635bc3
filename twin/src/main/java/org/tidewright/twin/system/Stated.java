package org.tidewright.twin.system;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.plan.source.Basis;
import org.tidewright.twin.contract.Declaration;
import org.tidewright.twin.contract.Drawn;
import org.tidewright.twin.contract.Parameter;

/**
 * Numbers as the plan states them: exact where it gives no doubt, a parameter where it does (± one standard error). What
 * is asked for twice is declared once.
 */
final class Stated {
    private static final String SOURCE = "as stated, ± one standard error";

    private final Declaration declaration;
    private final Map<String, Drawn> byName = new HashMap<>();

    Stated(Declaration declaration) {
        this.declaration = declaration;
    }

    /** A number that cannot be negative, as what it is of; unique among the network's parameters. */
    Drawn of(String name, Amount amount, String unit) {
        return byName.computeIfAbsent(name, unseen -> declared(name, amount, unit));
    }

    /** The same, with what holds where the plan is silent. */
    Drawn or(String name, @Nullable Amount amount, String unit, Drawn otherwise) {
        return amount == null ? otherwise : of(name, amount, unit);
    }

    private Drawn declared(String name, Amount amount, String unit) {
        double usual = amount.in(unit);
        double reach = Parameter.NORMAL_95 * amount.doubtIn(unit);
        return reach == 0
                ? Drawn.exactly(usual)
                : declaration.parameter(
                        name, unit, usual, Math.max(0, usual - reach), usual + reach, Basis.YOUR_PLAN, SOURCE);
    }
}
