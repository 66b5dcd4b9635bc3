/**
 * What kind of ground a number stands on: {@link org.tidewright.plan.source.Basis}. Every constant, method and rule that a
 * keeper is told of carries one, beside the publication or the practice in words.
 */
@NullMarked
package org.tidewright.plan.source;

import org.jspecify.annotations.NullMarked;
