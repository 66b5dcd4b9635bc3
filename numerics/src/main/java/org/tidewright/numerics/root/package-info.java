/**
 * Roots of functions of one variable.
 *
 * <p>Uses nothing else of the project. To add a method, give it a class of its own named for what it needs ({@link
 * org.tidewright.numerics.root.Bracketed} needs a bracket), a bound on its evaluations in the doc comment, and the same
 * property test: whatever the function, the answer lies within the tolerance of a change of sign.
 */
@NullMarked
package org.tidewright.numerics.root;

import org.jspecify.annotations.NullMarked;
