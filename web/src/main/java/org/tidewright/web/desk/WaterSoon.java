package org.tidewright.web.desk;

import org.tidewright.husbandry.livestock.Water;

/** What candidates would do to the water, as far as the twin knows within the moments a page may wait. */
public interface WaterSoon extends Water {
    /** Whether something that was asked is still being worked out; asked again later, it is known. */
    boolean isLate();
}
