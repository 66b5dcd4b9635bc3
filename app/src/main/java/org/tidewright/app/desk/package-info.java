/**
 * What the pages ask for, answered from the folder of plans and from husbandry.
 *
 * <p>Implements the port of {@code org.tidewright.web.desk}. To answer something more, add it to the port and to {@link
 * org.tidewright.app.desk.LiveDesk}; what is costly to compute goes through {@link org.tidewright.app.desk.Memory}.
 */
@NullMarked
package org.tidewright.app.desk;

import org.jspecify.annotations.NullMarked;
