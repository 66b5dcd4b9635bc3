/**
 * What is known of the species that people keep: facts with their sources, from {@code fish.csv}, {@code invertebrates.csv} and
 * {@code sources.csv} beside this package, and from files of the keeper's own in the same columns.
 *
 * <p>May use {@code plan.fault}, {@code plan.source} and the units of {@code seawater}. It knows no system and judges nothing.
 *
 * <p>To add a species, add a row with its sources; to add a fact, add a column, its place in {@link
 * org.tidewright.plan.species.FishColumns} or {@link org.tidewright.plan.species.InvertebrateColumns}, and its line in
 * {@code docs/formats/species.md}.
 */
@NullMarked
package org.tidewright.plan.species;

import org.jspecify.annotations.NullMarked;
