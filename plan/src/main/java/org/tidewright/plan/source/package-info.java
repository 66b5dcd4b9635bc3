/**
 * What kind of ground a number stands on: {@link org.tidewright.plan.source.Basis}. Every constant, method and rule that a
 * keeper is told of carries one, beside the publication or the practice in words.
 *
 * <p>Nothing here computes, and every module may use it. To add a kind of ground, add a constant with the words the pages
 * say it in.
 */
@NullMarked
package org.tidewright.plan.source;

import org.jspecify.annotations.NullMarked;
