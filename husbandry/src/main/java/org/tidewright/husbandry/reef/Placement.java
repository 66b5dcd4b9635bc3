package org.tidewright.husbandry.reef;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How a coral stands, or would stand, at a place.
 *
 * @param colony at that place
 * @param light there; null where it is not known
 * @param flow there; null where it is not known
 * @param neighbours every other coral whose place is known, the one with least to spare first
 */
public record Placement(
        Colony colony,
        @Nullable PointValue light,
        Suits suitsLight,
        @Nullable PointValue flow,
        Suits suitsFlow,
        List<Neighbours> neighbours) {
    public Placement {
        neighbours = List.copyOf(neighbours);
    }

    /** Where it is. */
    public Place place() {
        return requireNonNull(colony.place(), "the place of a placed colony");
    }

    /** The neighbour with least to spare. */
    public Optional<Neighbours> nearest() {
        return neighbours.stream().findFirst();
    }

    /** How it stands to its neighbours. */
    public Neighbours.Standing standing() {
        return nearest().map(Neighbours::standing).orElse(Neighbours.Standing.APART);
    }

    /** Whether nothing that is known speaks against it. */
    public boolean isGood() {
        return suitsLight.mayStay() && suitsFlow.mayStay() && standing() == Neighbours.Standing.APART;
    }

    /** How much is wrong, for telling the worst first: 0 where nothing is. */
    public int trouble() {
        int ofNeighbours = switch (standing()) {
            case TOUCHING -> 6;
            case IN_REACH -> 5;
            case CLOSE -> 2;
            case GROWING_CLOSE -> 1;
            case APART -> 0;
        };
        int ofWater =
                suitsLight.isWrong() || suitsFlow.isWrong() ? 4 : suitsLight.mayStay() && suitsFlow.mayStay() ? 0 : 3;
        return Math.max(ofNeighbours, ofWater);
    }
}
