/**
 * What each page shows, ready for its template in src/main/jte: one record a page, made from the desk's answers, with
 * every number already told in the reader's units. {@link org.tidewright.web.page.Pages} turns a record into HTML.
 *
 * <p>Words that come from a plan are escaped by the template or by {@link org.tidewright.web.page.Markup}; only what was
 * escaped already becomes a Markup. To add a page, write its record and its template here and its handler in {@link
 * org.tidewright.web.route}.
 */
@NullMarked
package org.tidewright.web.page;

import org.jspecify.annotations.NullMarked;
