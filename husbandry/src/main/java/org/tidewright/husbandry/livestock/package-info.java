/**
 * Whether an animal may come to live in a system: yes, not yet or no, with the reasons and with what would change it.
 *
 * <p>A {@link org.tidewright.husbandry.livestock.Rule} looks at one thing (room, prey, sand, age of the tank …) and finds what
 * holds, what is to be minded, what has to wait and what cannot be. {@link org.tidewright.husbandry.livestock.Verdict} is the
 * worst of all findings. Facts come from the catalogue of species with their sources; bounds of the rules are this project's own
 * or common practice and say so.
 *
 * <p>To add a rule: one class, a line in {@link org.tidewright.husbandry.livestock.Rules}, cases in the panel of its tests.
 */
@NullMarked
package org.tidewright.husbandry.livestock;

import org.jspecify.annotations.NullMarked;
