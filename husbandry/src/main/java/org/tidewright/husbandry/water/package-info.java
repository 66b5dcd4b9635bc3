/**
 * What a power cut's water means to the keeper: room left in the sump, with its doubt.
 *
 * <p>Shared by the checks and the rehearsals, so that both say the same number.
 *
 * <p>Uses the twin's power cut. To change how sure a litre is told, see {@link
 * org.tidewright.husbandry.water.DrainDownStudy}.
 */
@NullMarked
package org.tidewright.husbandry.water;

import org.jspecify.annotations.NullMarked;
