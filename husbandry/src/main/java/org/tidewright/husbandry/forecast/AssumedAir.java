package org.tidewright.husbandry.forecast;

import java.util.Optional;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.plan.model.Room;

/** Tells what is taken for the air of a room whose plan says nothing of it: pH hangs on it more than on most that is stated. */
public final class AssumedAir {
    private AssumedAir() {}

    /** A sentence; none where the plan names people or its air. */
    public static Optional<String> of(Room room) {
        if (!room.people().isEmpty() || room.carbonDioxide() != null) {
            return Optional.empty();
        }
        return Optional.of("Your plan tells nothing of the people in the room or of its air: reckoned with "
                + FigureText.number(1e6 * Room.LIVED_IN, 0)
                + "\u00a0ppm of carbon dioxide, usual of a lived-in room; with 1000 pH would be about 0.1 lower."
                + " State people or carbon_dioxide under room.");
    }
}
