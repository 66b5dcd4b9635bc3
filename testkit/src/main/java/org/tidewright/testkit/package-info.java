/**
 * What the tests of every module share: {@link org.tidewright.testkit.ReferenceTable} reads the numbers of other people
 * from a CSV file beside the tests, {@link org.tidewright.testkit.Close} compares with them and says, when it fails,
 * which number of which file was missed and by how much. {@link org.tidewright.testkit.SeededCases} tries a property on
 * random cases that can be had again.
 *
 * <p>Test scope only; may use JUnit, AssertJ and the CSV reader, and knows nothing of the other modules. To add a
 * reference file, lay it under {@code src/test/resources/reference/<topic>/} and open it with lines that start with
 * {@code #}: source, how the numbers were taken, tolerance. Numbers of our own making never go into such a file.
 */
@NullMarked
package org.tidewright.testkit;

import org.jspecify.annotations.NullMarked;
