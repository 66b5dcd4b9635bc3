package org.tidewright.husbandry.exchange;

import java.io.IOException;
import java.util.List;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Photos.Photo;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;

/** Reads a copy from its beginning to its end, piece by piece. */
interface CopyReader {
    /** Values of a probe are handed on in blocks of so many. */
    int BLOCK = 10_000;

    /** Reads all of it; what is wrong goes to the faults, what is right to the listener. */
    void read(Listener listener, Faults faults) throws IOException;

    /** Is told what stands in a copy. */
    interface Listener {
        void system(String name);

        /** @param entry its place in the order of writing, counted from 1 */
        void line(Place place, int entry, Line line);

        void values(Place place, Probe probe, List<Value> values);

        void photo(Place place, String name, Photo photo);
    }
}
