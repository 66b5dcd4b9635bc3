package org.tidewright.husbandry.shop;

import static org.tidewright.husbandry.shop.BadSign.Weight.ASK;
import static org.tidewright.husbandry.shop.BadSign.Weight.LEAVE;
import static org.tidewright.husbandry.shop.BadSign.memory;
import static org.tidewright.husbandry.shop.BadSign.practice;

import java.util.List;

/** What speaks against a coral. */
final class CoralSigns {
    private static final String FLESH = "Flesh";
    private static final String BASE = "Base and branches, with a torch";
    private static final String WATER = "Its water and its story";

    static final List<BadSign> ALL = List.of(
            practice(
                    "coral_receding",
                    FLESH,
                    "Bare white skeleton at edge or base",
                    "its flesh recedes",
                    LEAVE,
                    "It loses flesh, and a move seldom stops that. Skeleton with old algae on it and a thick living edge has"
                            + " stopped by itself: then ask since when."),
            practice(
                    "coral_shreds",
                    FLESH,
                    "Flesh comes off in shreds",
                    "its flesh comes off",
                    LEAVE,
                    "It may be bare within a day, and neighbours with it."),
            practice(
                    "coral_jelly",
                    FLESH,
                    "Brown jelly, or a rotten smell",
                    "it has brown jelly",
                    LEAVE,
                    "Rot that spreads from one to the next. Buy nothing that stands in that water."),
            practice(
                    "coral_pale",
                    FLESH,
                    "Pale or white, skeleton shines through",
                    "it is bleached",
                    ASK,
                    "It has lost its algae by heat, light or hunger. Flesh that is whole may colour again in months, with food and"
                            + " little light: not as a first coral."),
            practice(
                    "coral_closed",
                    FLESH,
                    "Closed while its neighbours are open",
                    "it stays closed",
                    ASK,
                    "Ask since when, and whether it was moved today; see it open before you pay."),
            practice(
                    "coral_gapes",
                    FLESH,
                    "Mouths gape",
                    "its mouths gape",
                    LEAVE,
                    "Long stress or hunger, if nobody feeds just now."),
            practice(
                    "coral_torn",
                    FLESH,
                    "Torn, or broken through living flesh",
                    "it is torn",
                    ASK,
                    "Wounds rot in the bag. Ask for it to be kept until they have closed."),
            practice(
                    "coral_bites",
                    BASE,
                    "Round bites, or pale spots in a row",
                    "something bites it",
                    LEAVE,
                    "Flatworms or slugs that you do not see eat of it."),
            practice(
                    "coral_eggs",
                    BASE,
                    "Eggs: dots, plates or spirals",
                    "it carries eggs of pests",
                    LEAVE,
                    "Dips kill what crawls and spare eggs; they hatch at home."),
            practice(
                    "coral_pests",
                    BASE,
                    "Flatworms, slugs or snails on it",
                    "it carries pests",
                    LEAVE,
                    "Where one sits there are more, on its neighbours too."),
            practice(
                    "coral_glass",
                    BASE,
                    "Small brown anemones or polyps",
                    "its base carries other anemones",
                    ASK,
                    "Glass anemones and their like spread from one. Ask for it without its base, cut off before it goes home."),
            practice(
                    "coral_algae",
                    BASE,
                    "Bubbles or tufts of algae",
                    "its base carries algae",
                    ASK,
                    "Hard to be rid of in a tank. Ask for it without its base."),
            practice(
                    "coral_fresh",
                    BASE,
                    "Cut days ago, not grown on",
                    "it was cut a few days ago",
                    ASK,
                    "A piece that has crept over its cut has lived through it. Ask for it in two weeks."),
            practice(
                    "coral_sick_neighbours",
                    WATER,
                    "Neighbours that lose flesh",
                    "its neighbours lose flesh",
                    LEAVE,
                    "What they have is in its water."),
            practice(
                    "coral_new",
                    WATER,
                    "Less than a week in the shop",
                    "it came less than a week ago",
                    ASK,
                    "Many fail in their first days under new light. Ask for it to be kept for you."),
            practice(
                    "coral_fish",
                    WATER,
                    "Fish swim in its water",
                    "fish swim in its water",
                    ASK,
                    "Ask whether any was ill: cysts of white spot come along on the base, so that it stands apart from fish at home"
                            + " first."),
            practice(
                    "coral_light",
                    WATER,
                    "Only seen under deep blue light",
                    "you saw it under blue light only",
                    ASK,
                    "Blue hides white flesh. Ask for white light for a minute."),
            memory(
                    "coral_papers",
                    WATER,
                    "No papers, origin unknown",
                    "it has no papers",
                    ASK,
                    "Trade in stony corals is regulated (CITES, appendix II). Ask for papers, or for one grown by people."));

    private CoralSigns() {}
}
