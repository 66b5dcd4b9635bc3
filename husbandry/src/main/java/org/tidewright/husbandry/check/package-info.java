/**
 * The checks of a plan, one class each: what must hold, by how much it does, and what to do if it does not.
 *
 * <p>To add a check, write a class with a static {@code check(Situation, Sources)} that answers with {@link
 * org.tidewright.husbandry.advice.Check} objects, and name it in {@link org.tidewright.husbandry.check.PlanChecks}. It
 * shares the plan's rehearsals through {@link org.tidewright.husbandry.check.Situation}, so nothing is computed twice.
 */
@NullMarked
package org.tidewright.husbandry.check;

import org.jspecify.annotations.NullMarked;
