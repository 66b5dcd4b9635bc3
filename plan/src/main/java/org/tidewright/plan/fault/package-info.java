/**
 * What is wrong with a plan, and where: {@link org.tidewright.plan.fault.Fault} with its place in the text, and the guess
 * at the word that was meant.
 *
 * <p>Uses nothing of the plan. The reader and the rules both report through it; to say a fault otherwise, change {@link
 * org.tidewright.plan.fault.Fault#sentence()}.
 */
@NullMarked
package org.tidewright.plan.fault;

import org.jspecify.annotations.NullMarked;
