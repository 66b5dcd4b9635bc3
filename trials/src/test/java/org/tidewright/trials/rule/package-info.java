/**
 * Rules about our own code and files that the compiler cannot keep: which module may use which, what computing code must
 * not call, that every number says its unit and every law its source, that every folder has its signpost.
 *
 * <p>Reads the checkout and the compiled classes, runs nothing of the program. To add a rule, write a test whose name
 * states it; where old code still breaks it, list the offenders in a file under {@code frozen/} that may only shrink.
 */
@NullMarked
package org.tidewright.trials.rule;

import org.jspecify.annotations.NullMarked;
