/** Tests of the laws of animals and algae. */
@NullMarked
package org.tidewright.twin.law.biota;

import org.jspecify.annotations.NullMarked;
