/**
 * Benchmarks, one class for each thing a keeper waits for. They take their plans from the examples and give their results
 * back, so that the compiler can leave nothing out.
 *
 * <p>To add one, write a class named for what it measures; see bench/README.md for how it is run and reported.
 */
@NullMarked
package org.tidewright.bench;

import org.jspecify.annotations.NullMarked;
