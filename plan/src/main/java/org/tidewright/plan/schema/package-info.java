/**
 * The JSON Schema of the plan file, generated from the records of {@link org.tidewright.plan.model}, so that editors can
 * help while a plan is typed. Nothing to add here when a key is added.
 * It knows shapes, words and units; what two keys mean together is left to the rules.
 */
@NullMarked
package org.tidewright.plan.schema;

import org.jspecify.annotations.NullMarked;
