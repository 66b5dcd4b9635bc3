/**
 * What a power cut's water means to the keeper: room left in the sump, with its doubt.
 *
 * <p>Shared by the checks and the rehearsals, so that both say the same number.
 */
@NullMarked
package org.tidewright.husbandry.water;

import org.jspecify.annotations.NullMarked;
