/**
 * Which address answers what, and who may ask. Every answer carries the headers of {@link
 * org.tidewright.web.route.RequestGuard}; every form is taken only with the token of {@link
 * org.tidewright.web.route.FormToken}; what goes wrong is told by {@link org.tidewright.web.route.Problems} without a
 * trace of the program's inside.
 *
 * <p>To add a page, write its handler in the class of its kind and register it there; to add a file, list it in {@link
 * org.tidewright.web.route.Assets}.
 */
@NullMarked
package org.tidewright.web.route;

import org.jspecify.annotations.NullMarked;
