package org.tidewright.husbandry.shop;

import static org.tidewright.husbandry.shop.BadSign.Weight.ASK;
import static org.tidewright.husbandry.shop.BadSign.Weight.LEAVE;
import static org.tidewright.husbandry.shop.BadSign.memory;
import static org.tidewright.husbandry.shop.BadSign.practice;

import java.util.List;

/** What speaks against a shrimp, a crab, a snail, a star, an urchin, a clam, an anemone or a worm. */
final class OtherSigns {
    private static final String ANY = "Any of them";
    private static final String LEGS = "Shrimps and crabs";
    private static final String SHELLS = "Snails and clams";
    private static final String STARS = "Stars, urchins, cucumbers";
    private static final String ANEMONES = "Anemones";
    private static final String WATER = "Its water and its story";

    static final List<BadSign> ALL = List.of(
            practice(
                    "other_limp",
                    ANY,
                    "Does not move when you come near",
                    "it hardly moves",
                    LEAVE,
                    "Weak or dying. What lives by night may sit still, but holds on firmly."),
            practice(
                    "other_refuses",
                    ANY,
                    "Did not take food before you",
                    "it does not eat",
                    ASK,
                    "Shrimps, crabs and anemones take food at once; grazers should sit where there is something to graze."),
            memory(
                    "other_milky",
                    LEGS,
                    "Milky flesh in a clear shrimp",
                    "its flesh is milky",
                    LEAVE,
                    "Muscle that dies, by stress or infection."),
            practice(
                    "other_legs",
                    LEGS,
                    "Legs, claws or feelers missing",
                    "it lacks limbs",
                    ASK,
                    "They come back with the next moults if it eats. Ask who bites it."),
            practice(
                    "other_off_foot",
                    SHELLS,
                    "Snail on its back, or hangs out",
                    "it does not hold on",
                    LEAVE,
                    "A snail that is well draws in when touched. Dead ones foul a small tank overnight: smell it."),
            practice(
                    "other_gapes",
                    SHELLS,
                    "Clam gapes, or ignores a shadow",
                    "it does not close",
                    LEAVE,
                    "A clam that is well closes when a hand shades it."),
            practice(
                    "other_mantle",
                    SHELLS,
                    "Clam’s mantle drawn in, torn, white",
                    "its mantle is drawn in or torn",
                    LEAVE,
                    "Hunger, parasites, or a torn byssus; look for small snails along the shell."),
            practice(
                    "other_dissolves",
                    STARS,
                    "Star limp, arm tips gone, white spots",
                    "it falls apart",
                    LEAVE,
                    "Most stars that begin to come apart go on. Fast changes of salinity begin it."),
            practice(
                    "other_spines",
                    STARS,
                    "Urchin loses spines, bare patches",
                    "it loses its spines",
                    LEAVE,
                    "Spines that lie down or drop are a last sign."),
            practice(
                    "other_insides",
                    STARS,
                    "Cucumber slack, or insides out",
                    "it has thrown out its insides",
                    LEAVE,
                    "Some kinds poison a tank in dying."),
            practice(
                    "other_foot",
                    ANEMONES,
                    "Foot torn, or does not stick",
                    "its foot is torn",
                    LEAVE,
                    "Torn when it was pulled off; wounds of the foot rot."),
            practice(
                    "other_mouth",
                    ANEMONES,
                    "Mouth wide open or turned out",
                    "its mouth stays open",
                    LEAVE,
                    "A mouth that is well is closed and tight."),
            practice(
                    "other_bleached",
                    ANEMONES,
                    "White, or coloured glaringly",
                    "it is bleached or dyed",
                    LEAVE,
                    "White has lost its algae; an even yellow, pink or blue may be dye. Most die."),
            practice(
                            "other_copper",
                            WATER,
                            "Water with copper, now or before",
                            "there was copper in its water",
                            LEAVE,
                            "Copper kills most invertebrates, late too. Look whether snails live in that tank.")
                    .published("University of Florida, extension bulletin FA165"),
            practice(
                    "other_sick_neighbours",
                    WATER,
                    "Dead animals in its water",
                    "dead animals lie in its water",
                    LEAVE,
                    "Water that kills one soon kills the next."),
            practice(
                    "other_new",
                    WATER,
                    "Less than a week in the shop",
                    "it came less than a week ago",
                    ASK,
                    "Losses come in the first days. Ask for it to be kept for you."),
            practice(
                    "other_salinity",
                    WATER,
                    "Nobody can say how salty its water is",
                    "its salinity is not known",
                    ASK,
                    "Stars, shrimps and snails die of fast changes. Ask for a measurement, and take hours over the difference."),
            practice(
                    "other_origin",
                    WATER,
                    "Nobody knows its kind",
                    "nobody knows what it is",
                    ASK,
                    "What it eats and how large it grows hangs on that. Ask for the scientific name, and look it up here."));

    private OtherSigns() {}
}
