/**
 * Advice as JSON, for other programs: numbers in metric units whose symbol ends every name, sentences beside them in the
 * plan's own units. docs/formats/json.md describes every field.
 *
 * <p>To add a field, add it here and there.
 */
@NullMarked
package org.tidewright.husbandry.json;

import org.jspecify.annotations.NullMarked;
