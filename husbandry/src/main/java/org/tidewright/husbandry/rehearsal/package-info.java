/**
 * Rehearsals told to the keeper: the twin's result, the limits it meets and the sentences that say so.
 *
 * <p>To add a rehearsal, run it in {@code org.tidewright.twin.rehearsal} and say here what it means.
 * Words about water and words about heat and air live in a class each.
 */
@NullMarked
package org.tidewright.husbandry.rehearsal;

import org.jspecify.annotations.NullMarked;
