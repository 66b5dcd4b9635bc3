package org.tidewright.bench;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Recipe;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.contract.Watch;

/**
 * Writes down what an event does instead of doing it: what it brings by the amount, what it takes out of a vessel or pool,
 * all but water, by the share.
 */
final class DeedRecord implements Watch.Switchboard, Transfers {
    private final List<String> lines = new ArrayList<>();
    private final List<String> pours = new ArrayList<>();
    private final View now;
    private @Nullable Body poured;

    DeedRecord(View now) {
        this.now = now;
    }

    void write(PrintWriter out) {
        lines.forEach(out::println);
    }

    boolean isEmpty() {
        return lines.isEmpty();
    }

    /** What was moved, as numbers of a mechanism. */
    void writePours(PrintWriter out, String path) {
        pours.forEach(pour -> out.println("of\t" + path + "." + pour));
        if (poured != null) {
            out.println("at\t" + path + ".into\t" + poured);
        }
    }

    @Override
    public Transfers atOnce() {
        return this;
    }

    @Override
    public void set(Setting setting, double value) {
        lines.add("set\t" + setting.name() + "\t" + value);
    }

    @Override
    public void move(Stock stock, Body from, Body to, double amount) {
        if (amount != 0 && !from.isOutside()) {
            lines.add("take\t" + stock + "\t" + from + "\t" + amount / now.stock(from, stock));
        } else if (amount != 0) {
            lines.add("move\t" + stock + "\t" + from + "\t" + to + "\t" + amount);
            pours.add(stock + "\t" + amount);
            poured = to;
        }
    }

    @Override
    public void water(Body from, Body to, double amount) {
        lines.add("water\t" + from + "\t" + to + "\t" + amount);
    }

    @Override
    public void setAt(double time, Setting setting, double value) {
        throw new UnsupportedOperationException("the peer knows no later orders");
    }

    @Override
    public void vapour(Body from, Body to, double amount, double latentHeat) {
        throw new UnsupportedOperationException("the peer knows no event that evaporates water");
    }

    @Override
    public void heat(Body from, Body to, double amount) {
        move(Stock.HEAT, from, to, amount);
    }

    @Override
    public void run(Recipe recipe, double times) {
        throw new UnsupportedOperationException("the peer knows no event that lets a reaction go");
    }
}
