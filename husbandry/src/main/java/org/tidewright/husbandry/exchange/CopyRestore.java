package org.tidewright.husbandry.exchange;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Photos.Photo;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;

/**
 * Reads a copy back, all or nothing: the first reading only looks for faults, the second keeps. Pictures and values come before
 * the lines, so that a line never stands without what it tells of; where the disk fails in between, reading the same copy again
 * completes it.
 */
final class CopyRestore implements CopyReader.Listener {
    private final KeptSystem into;
    private final Map<String, String> newPhotoNames = new HashMap<>();

    private CopyRestore(KeptSystem into) {
        this.into = into;
    }

    static Restoring restore(CopyReader copy, KeptSystem into) throws IOException {
        Faults faults = new Faults();
        CopyCheck check = new CopyCheck(into, faults);
        copy.read(check, faults);
        if (faults.isEmpty()) {
            check.end();
        }
        if (!faults.isEmpty()) {
            return faults.faulty();
        }
        CopyRestore keeping = new CopyRestore(into);
        copy.read(keeping, faults);
        if (!faults.isEmpty()) {
            return faults.faulty();
        }
        List<Line> lines = check.lines().stream().map(keeping::renamed).toList();
        int newLines = into.journal().restore(into.name(), lines);
        return new Restoring.Done(check.system(), lines.size(), newLines, check.probeValues(), check.photos());
    }

    @Override
    public void system(String name) {}

    @Override
    public void line(Place place, int entry, Line line) {}

    @Override
    public void values(Place place, Probe probe, List<Value> values) {
        into.probes().append(into.name(), probe, values);
    }

    @Override
    public void photo(Place place, String name, Photo photo) {
        newPhotoNames.put(name, into.photos().keep(into.name(), photo));
    }

    /** Another store may name a picture otherwise. */
    private Line renamed(Line line) {
        if (line.event() instanceof Event.Observation seen && seen.photo() != null) {
            String name = newPhotoNames.getOrDefault(seen.photo(), seen.photo());
            if (!name.equals(seen.photo())) {
                Event event = new Event.Observation(seen.seen(), name);
                return new Line(
                        line.id(), line.revision(), line.at(), event, line.remark(), line.struck(), line.writtenAt());
            }
        }
        return line;
    }
}
