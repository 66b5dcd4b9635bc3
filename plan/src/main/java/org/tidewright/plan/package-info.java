/**
 * The plan of a system: {@code model} says what it holds, {@code quantity} how its numbers are written, {@code text} reads
 * and writes the file, {@code rule} checks what keys mean together, {@code schema} tells editors about it.
 *
 * <p>To add an example, put its YAML beside the others and its name into {@link org.tidewright.plan.Examples}.
 */
@NullMarked
package org.tidewright.plan;

import org.jspecify.annotations.NullMarked;
