/**
 * A new tank told to the keeper: the day it can take its first animals, what its water goes through until then, and what four
 * fish at once would do in place of one a fortnight.
 *
 * <p>Runs {@link org.tidewright.twin.forecast.NewTank} and finds the words. To tell one more figure, find it in {@link
 * org.tidewright.husbandry.newtank.Peak} and put it into {@link org.tidewright.husbandry.newtank.NewTankStudy}.
 */
@NullMarked
package org.tidewright.husbandry.newtank;

import org.jspecify.annotations.NullMarked;
