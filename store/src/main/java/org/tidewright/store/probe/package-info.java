/**
 * What probes say, in SQL: each value a row, and beside them what there is of values in each hour and each day, so that years
 * can be charted without reading millions of rows.
 *
 * <p>A summary is never counted up: it is computed anew from its values in the transaction that brings one of them. To keep
 * another length of summaries, add a {@code Stretch} and a script that fills it.
 */
@NullMarked
package org.tidewright.store.probe;

import org.jspecify.annotations.NullMarked;
