/**
 * Dosing solutions mixed from pure salts: what to weigh, how strong it comes out, whether it stays clear in a cold room, how
 * warm it gets, what is in a bottle already there, and what a year of it leaves behind in the water.
 *
 * <p>{@link org.tidewright.husbandry.solution.Solution} is what is dissolved, {@link
 * org.tidewright.husbandry.solution.Recipe} how it is weighed in, {@link org.tidewright.husbandry.solution.Strength} what a
 * volume of it does, {@link org.tidewright.husbandry.solution.Residue} what stays when calcification has taken its part;
 * {@link org.tidewright.husbandry.solution.SolutionReport} tells them. Pure functions over {@link
 * org.tidewright.plan.model.Salt}; limewater's strength is the twin's. To add a salt, give {@code Salt} its formula, and
 * {@code Solubility}, {@code SolutionDensity}, {@code HeatOfSolution} and {@code SoldSalt} their row: a test asks for each.
 */
@NullMarked
package org.tidewright.husbandry.solution;

import org.jspecify.annotations.NullMarked;
