package org.tidewright.husbandry.livestock;

import java.util.List;

/**
 * What plan and log tell of how kinds have fared.
 *
 * @param thriving those that have lived there for half a year or more
 * @param died those that died there in the last year
 */
public record Experience(List<Animals> thriving, List<Animals> died) {
    public Experience {
        thriving = List.copyOf(thriving);
        died = List.copyOf(died);
    }
}
