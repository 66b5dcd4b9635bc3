/**
 * Least values of functions of several variables.
 *
 * <p>Uses nothing else of the project. To add a method, give it a class of its own named for what it needs ({@link
 * org.tidewright.numerics.optimum.QuasiNewton} needs slopes), with a bound on its evaluations, and test it on functions whose
 * least value is known.
 */
@NullMarked
package org.tidewright.numerics.optimum;

import org.jspecify.annotations.NullMarked;
