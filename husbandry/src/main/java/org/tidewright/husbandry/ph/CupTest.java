package org.tidewright.husbandry.ph;

import java.util.List;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * The aeration test: two cups of the tank's water, one aired with outdoor air, one with the room's, read with the same
 * electrode. What the electrode is off by is the same in all three readings and cancels.
 *
 * @param tank pH of the tank
 * @param outdoors pH of the cup aired outdoors
 * @param room pH of the cup aired in the room
 */
public record CupTest(
        @Unit("1") double tank,
        @Unit("1") double outdoors,
        @Unit("1") double room) {
    /** Least rise that counts; common practice, and above twice what one reading differs from the next by. */
    @Unit("1")
    public static final double RISES = 0.1;

    /** What it tells. */
    public enum Finding {
        /** Only the cup outdoors rises. */
        ROOM_AIR,
        /** Both rise. */
        TANK,
        /** Neither rises: it is at rest with fresh air already. */
        ALKALINITY_OR_ELECTRODE,
        /** The cup in the room rises and the one outdoors does not, which no air explains. */
        REPEAT
    }

    /** Refuses what cannot be meant. */
    public CupTest {
        Bounds.within(tank, "1", 6, 10, "pH of the tank");
        Bounds.within(outdoors, "1", 6, 10, "pH of the cup aired outdoors");
        Bounds.within(room, "1", 6, 10, "pH of the cup aired in the room");
    }

    public Finding finding() {
        boolean inRoom = room - tank >= RISES;
        boolean outside = outdoors - tank >= RISES;
        if (outside) {
            return inRoom ? Finding.TANK : Finding.ROOM_AIR;
        }
        return inRoom ? Finding.REPEAT : Finding.ALKALINITY_OR_ELECTRODE;
    }

    /** What to do about it. */
    public Sentence told() {
        return switch (finding()) {
            case ROOM_AIR ->
                Sentence.of(
                        "Air the room, or lead outdoor air to the skimmer: outdoors the cup rose by ",
                        rise(outdoors),
                        ", in the room it did not, so the room's carbon dioxide holds the pH down.");
            case TANK ->
                Sentence.of(
                        "Move more air over the water: the cup rose by ",
                        rise(room),
                        " in the room's own air and by ",
                        rise(outdoors),
                        " outdoors, so the tank breathes out more than its surface lets go.");
            case ALKALINITY_OR_ELECTRODE ->
                Sentence.of(
                        "Leave the air alone: neither cup rose, so the water is at rest with fresh air. If the pH still"
                                + " looks low, check the electrode with fresh buffers, then the alkalinity.");
            case REPEAT ->
                Sentence.of("Do the test again: the cup in the room rose and the one outdoors did not, which no air"
                        + " explains. Were they mixed up, or not yet at rest?");
        };
    }

    private Figure rise(double cup) {
        return Figure.exact(Measure.PH, cup - tank);
    }

    /** How to do it, with what the cups should come to. */
    public static Advice instruction(PhCase water) {
        return instruction(water, new Sources());
    }

    static Advice instruction(PhCase water, Sources sources) {
        String practice = sources.key(
                "The test with two cups",
                Basis.COMMON_PRACTICE,
                "a litre each, an air stone, an hour; a rise of 0.1 counts");
        String law = PhWords.carbonates(sources);
        String outdoorAir = OutdoorAir.key(sources);
        String roomAir =
                sources.key("The room's air", water.room().basis(), water.room().detail());
        Figure fresh = Figure.exact(Measure.PH, water.phOutdoors());
        Figure inRoom = Figure.exact(Measure.PH, water.phInRoom());
        return new Advice(
                Sentence.of(
                        "Fill two clean cups with a litre of the tank's water each, and air one outdoors or at an open window"
                                + " and one beside the tank, each with an air stone, for an hour and until its reading stands"
                                + " still for ten minutes",
                        new Sentence.Part.Reference(practice),
                        "."),
                List.of(
                        Sentence.of(
                                "Read tank and cups with the same electrode, one after the other, at the same temperature:"
                                        + " what it is off by cancels, and only the differences count. A cup that has"
                                        + " cooled reads another pH: stand it in the tank until it is warm again."),
                        Sentence.of(
                                "At this alkalinity the cup outdoors should come to ",
                                Sentence.figure(fresh, law),
                                ", the cup in the room to ",
                                Sentence.figure(inRoom, roomAir),
                                ". If the cup outdoors ends far from that, electrode or alkalinity is off."),
                        Sentence.of(
                                "Only the cup outdoors rises by 0.1 or more: the room's air is the cause. Both rise: the tank"
                                        + " breathes out more than its surface lets go. Neither: alkalinity or electrode.")),
                List.of(
                        new Advice.Told("the cup outdoors comes to", fresh, outdoorAir),
                        new Advice.Told("the cup in the room comes to", inRoom, roomAir)),
                List.of(),
                List.of("Keep air pump and its plug above the water and in a drip loop; pour the cups away, not back."),
                sources.all());
    }
}
