/** Tests of the laws of glass and load. */
@NullMarked
package org.tidewright.twin.law.structure;

import org.jspecify.annotations.NullMarked;
