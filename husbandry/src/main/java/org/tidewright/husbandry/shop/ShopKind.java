package org.tidewright.husbandry.shop;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tidewright.plan.species.FishSpecies;
import org.tidewright.plan.species.InvertebrateSpecies;
import org.tidewright.plan.species.Species;

/** Kinds of animal that are looked at differently. */
public enum ShopKind {
    FISH("Fish"),
    CORAL("Coral"),
    OTHER("Other animal");

    private final String words;

    ShopKind(String words) {
        this.words = words;
    }

    /** As a page says it. */
    public String words() {
        return words;
    }

    /** Name in files and addresses. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What to look at, in the order of a walk round the animal. */
    public List<BadSign> signs() {
        return switch (this) {
            case FISH -> FishSigns.ALL;
            case CORAL -> CoralSigns.ALL;
            case OTHER -> OtherSigns.ALL;
        };
    }

    public static Optional<ShopKind> ofKey(String key) {
        return Arrays.stream(values()).filter(kind -> kind.key().equals(key)).findFirst();
    }

    /** The kind a species is looked at as. */
    public static ShopKind of(Species species) {
        if (species instanceof FishSpecies) {
            return FISH;
        }
        return ((InvertebrateSpecies) species).group().isCoral() ? CORAL : OTHER;
    }
}
