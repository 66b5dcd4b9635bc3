/**
 * What animals that are to come would do to the keeper's own water: ammonia while the bacteria follow, nitrate and phosphate in
 * twelve weeks, oxygen on a usual night and in an outage, at the size they come with and grown, each beside the same water
 * without them.
 *
 * <p>{@link org.tidewright.husbandry.burden.Residents} runs the twin of the system as it is, once; each {@link
 * org.tidewright.husbandry.burden.Addition} is then run over the same draws and becomes a {@link
 * org.tidewright.husbandry.burden.Burden}. Knows no species and no page. To tell one more figure, find it in {@code
 * CourseFigures}, put it into {@code Burden} and give it words in {@code BurdenWords}.
 */
@NullMarked
package org.tidewright.husbandry.burden;

import org.jspecify.annotations.NullMarked;
