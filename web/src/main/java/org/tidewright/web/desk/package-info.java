/**
 * The port through which pages reach systems and the twin: {@link org.tidewright.web.desk.Desk} and the records it
 * speaks in. The program that serves the pages implements it; nothing here computes.
 *
 * <p>To give a page something more to show, add a method to the port; implementers then fail to compile until they have
 * it.
 */
@NullMarked
package org.tidewright.web.desk;

import org.jspecify.annotations.NullMarked;
