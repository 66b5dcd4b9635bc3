/**
 * What becomes of nitrogen, phosphorus and organic carbon without animals or plants: bacteria, media, skimmers. Built on
 * the laws of {@link org.tidewright.twin.law.nutrient}.
 *
 * <p>To add one, write a record that implements {@link org.tidewright.twin.contract.Mechanism}, makes its recipes once
 * and runs them at the law's rate, and give it its bodies in {@code org.tidewright.twin.system}.
 */
@NullMarked
package org.tidewright.twin.mechanism.nutrient;

import org.jspecify.annotations.NullMarked;
