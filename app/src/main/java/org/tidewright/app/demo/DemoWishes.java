package org.tidewright.app.demo;

import org.tidewright.husbandry.wishlist.WishFile;
import org.tidewright.husbandry.wishlist.WishList;
import org.tidewright.husbandry.wishlist.WishText;
import org.tidewright.plan.species.Catalogue;

/** An invented wish list for the first system: fish that must wait for each other, a coral, and two that cannot come. */
public final class DemoWishes {
    private static final long BUDGET = 120_00;

    private static final String LIST = """
            2 neon goby price 36
            yellow assessor price 65 (prices are invented)
            mandarin dragonet price 60
            foxface rabbitfish 8 cm price 75
            6 scarlet reef hermit price 24
            candy cane coral price 45
            royal gramma price 30
            yellow tang price 90
            """;

    private DemoWishes() {}

    /** Its file. */
    public static String file() {
        WishText.Reading reading = WishText.read(LIST, Catalogue.ofProgram());
        if (!reading.faults().isEmpty()) {
            throw new IllegalStateException("the demo's wish list: " + reading.faults());
        }
        return WishFile.write(new WishList(reading.lines(), BUDGET, null));
    }
}
