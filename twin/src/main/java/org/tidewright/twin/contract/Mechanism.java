package org.tidewright.twin.contract;

import java.util.List;

/** One cause of change. Its fields are final; it reads only the present and remembers nothing. */
public interface Mechanism {
    /** Says what moves at this moment. No clock, no input, no dice. */
    void act(View now, Transfers out);

    /** As the accounts of a run tell it; mechanisms that share a name are accounted for together. */
    default String name() {
        return getClass().getSimpleName();
    }

    /** Crossings the stepper must land on. */
    default List<Watch> watches() {
        return List.of();
    }
}
