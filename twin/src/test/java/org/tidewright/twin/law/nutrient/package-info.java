/** Tests of the laws of nitrogen, phosphorus and organic matter. */
@NullMarked
package org.tidewright.twin.law.nutrient;

import org.jspecify.annotations.NullMarked;
