package org.tidewright.husbandry.livestock;

import java.util.List;

/** Looks at one thing. */
interface Rule {
    /** What it found; nothing where it has nothing to say of such an animal. */
    List<Finding> judge(Situation seen);
}
