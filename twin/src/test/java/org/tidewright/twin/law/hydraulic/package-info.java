/** Tests of the hydraulic laws. */
@NullMarked
package org.tidewright.twin.law.hydraulic;

import org.jspecify.annotations.NullMarked;
