/**
 * What must hold between the keys of a plan: a baffle is lower than its sump, a nozzle ends inside the tank, a battery
 * feeds devices that exist.
 *
 * <p>Each class looks at one block. To add a rule, add a method there that reports a path, what was found, what was
 * expected and how to mend it; bounds on a single key belong in its {@link org.tidewright.plan.model.Entry} instead.
 */
@NullMarked
package org.tidewright.plan.rule;

import org.jspecify.annotations.NullMarked;
