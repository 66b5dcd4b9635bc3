package org.tidewright.husbandry.shop;

import static org.tidewright.husbandry.shop.BadSign.Weight.ASK;
import static org.tidewright.husbandry.shop.BadSign.Weight.LEAVE;
import static org.tidewright.husbandry.shop.BadSign.memory;
import static org.tidewright.husbandry.shop.BadSign.practice;

import java.util.List;
import org.tidewright.husbandry.journal.Sign;

/** What speaks against a fish. What a sign of illness may be is told as {@link Sign} tells it. */
final class FishSigns {
    private static final String BREATH = "Breathing and bearing";
    private static final String SKIN = "Skin, eyes and fins";
    private static final String FOOD = "Belly and food";
    private static final String WATER = "Its water and its story";

    static final List<BadSign> ALL = List.of(
            memory(
                            "fish_breathes_fast",
                            BREATH,
                            "Breathes fast or hard, or the mouth stays open",
                            "it breathes fast",
                            LEAVE,
                            "Gills that suffer: parasites, too little oxygen, or ammonia. Count: 40 to 80 a minute are ordinary in a"
                                    + " small fish, 100 and more are not.")
                    .like(Sign.FAST_BREATHING),
            memory(
                            "fish_one_gill",
                            BREATH,
                            "Only one gill cover moves",
                            "it breathes on one side",
                            LEAVE,
                            "Flukes or an injury of the gill.")
                    .like(Sign.ONE_GILL_STILL),
            memory(
                            "fish_surface",
                            BREATH,
                            "Hangs at the surface or in the stream",
                            "it hangs at the surface",
                            LEAVE,
                            "It wants for air: parasites in the gills, too little oxygen, or ammonia.")
                    .like(Sign.HANGING_AT_THE_SURFACE),
            memory(
                            "fish_cannot_balance",
                            BREATH,
                            "Lists, spins, sinks or floats",
                            "it cannot keep its balance",
                            LEAVE,
                            "Harm from the catch or the journey, poisoning, or an illness within; few recover.")
                    .like(Sign.SPINNING),
            memory(
                            "fish_scratches",
                            BREATH,
                            "Rubs or flicks itself against things",
                            "it scratches itself",
                            LEAVE,
                            "Parasites of skin or gills, or water that stings.")
                    .like(Sign.SCRATCHING),
            memory(
                            "fish_hides",
                            BREATH,
                            "Hides, or does not look at you",
                            "it hides",
                            ASK,
                            "In its first days it is afraid; later that is a bad sign, unless its kind hides by day. Ask how long it"
                                    + " has been here and whether it comes for food.")
                    .like(Sign.HIDING),
            memory(
                            "fish_white_grains",
                            SKIN,
                            "White grains, like salt",
                            "it has white grains",
                            LEAVE,
                            "White spot until shown otherwise; all fish in that water have met it.")
                    .published("University of Florida, extension bulletin FA164, signs")
                    .like(Sign.WHITE_GRAINS),
            memory(
                            "fish_dusty",
                            SKIN,
                            "A dusty film, grey to golden",
                            "it has a dusty film",
                            LEAVE,
                            "It may be velvet, which kills within days. Look from the side, against the light.")
                    .published("Virginia Cooperative Extension 600-200")
                    .like(Sign.DUSTY_FILM),
            memory(
                            "fish_slime",
                            SKIN,
                            "Milky skin that peels",
                            "its skin peels",
                            LEAVE,
                            "Parasites of the skin; on clownfish it may be over within days.")
                    .like(Sign.PEELING_SLIME),
            memory(
                            "fish_sores",
                            SKIN,
                            "Sores, red patches, raised scales",
                            "it has sores",
                            LEAVE,
                            "Bacteria, single-celled parasites or a wound that does not heal.")
                    .like(Sign.SORES),
            memory(
                            "fish_cloudy_eye",
                            SKIN,
                            "An eye cloudy or standing out",
                            "an eye is cloudy",
                            ASK,
                            "One eye: often a blow from the net, which heals; ask for it to be kept a week. Both eyes: leave it.")
                    .like(Sign.CLOUDY_EYE),
            memory(
                            "fish_frayed",
                            SKIN,
                            "Fins torn, white-edged or shrinking",
                            "its fins are frayed",
                            ASK,
                            "A clean tear grows together; white or red edges mean bacteria: leave it. Ask who bites it.")
                    .like(Sign.FRAYED_FINS),
            memory(
                            "fish_clamped",
                            SKIN,
                            "Fins folded to the body",
                            "it clamps its fins",
                            ASK,
                            "Unwell, for one of many reasons. Look at the skin once more, and come back in a week.")
                    .like(Sign.CLAMPED_FINS),
            memory(
                            "fish_thin",
                            FOOD,
                            "Thin behind the head, hollow belly",
                            "it is thin behind the head",
                            LEAVE,
                            "It has hungered for long, or has worms; flesh of the back seldom comes back.")
                    .like(Sign.THIN_BEHIND_THE_HEAD),
            memory(
                            "fish_swollen",
                            FOOD,
                            "Belly swollen on both sides",
                            "its belly is swollen",
                            LEAVE,
                            "A blocked gut or bacteria within. Fish full of eggs or food are round and lively.")
                    .like(Sign.SWOLLEN_BELLY),
            memory(
                            "fish_droppings",
                            FOOD,
                            "Pale stringy droppings",
                            "its droppings are pale",
                            ASK,
                            "An empty gut, or parasites in it. Ask what it ate today, and see it eat.")
                    .like(Sign.PALE_STRINGY_DROPPINGS),
            practice(
                    "fish_refuses",
                    FOOD,
                    "Was fed before you, and did not eat",
                    "it does not eat",
                    LEAVE,
                    "The first thing a healthy fish does. A promise that it ate yesterday is none."),
            practice(
                    "fish_not_fed",
                    FOOD,
                    "You have not seen it eat",
                    "nobody showed you that it eats",
                    ASK,
                    "Ask for it to be fed now, with what you feed at home."),
            practice(
                    "fish_only_live",
                    FOOD,
                    "Takes only live food",
                    "it takes only live food",
                    ASK,
                    "Weeks of work before it takes yours. Ask for it to be fed frozen food, and come back."),
            practice(
                    "fish_sick_neighbours",
                    WATER,
                    "Dead or sick animals in its water",
                    "sick animals share its water",
                    LEAVE,
                    "What they have it has met. Tanks on one filter are one water: look at all of them."),
            practice(
                    "fish_new",
                    WATER,
                    "Less than a week in the shop",
                    "it came less than a week ago",
                    ASK,
                    "Harm from the catch and the journey shows in the first days. Ask for it to be kept for you."),
            practice(
                    "fish_medicated",
                    WATER,
                    "Water treated, or nobody can say",
                    "its water may be medicated",
                    ASK,
                    "Treatment hides signs for a while. Ask with what, since when and why; and none of that water goes into your"
                            + " tank: copper kills shrimps, snails and corals."),
            practice(
                    "fish_salinity",
                    WATER,
                    "Nobody can say how salty its water is",
                    "its salinity is not known",
                    ASK,
                    "Fish are often held in thinner water. Ask for a measurement: the way up to yours takes days."),
            memory(
                    "fish_origin",
                    WATER,
                    "Nobody knows where it is from",
                    "nobody knows where it is from",
                    ASK,
                    "Bred by people is best. One caught with poison looks well and dies weeks later."));

    private FishSigns() {}
}
