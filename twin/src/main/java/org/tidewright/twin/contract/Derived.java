package org.tidewright.twin.contract;

/**
 * A number that follows from parameters and is worked out once a run, because mechanisms ask for it at every moment.
 *
 * @param index position among the network's derived numbers
 * @param of how it follows
 */
public record Derived(int index, Drawn of) implements Drawn {
    @Override
    public double in(Draw draw) {
        return draw.derived(this);
    }
}
