/**
 * The packaged program in use: started as a process of its own, its pages opened in a real browser.
 *
 * <p>Needs what {@code app} packs into {@code target/dist}, and for the browser what {@code ./check} lays out. Classes
 * named {@code *IT} run in the phase {@code integration-test}. To try one more page, add its path to {@code PagesIT}; to
 * try what a person does on it, write a class of its own with {@code Program}, {@code Chromium} and {@code Visit}.
 */
@NullMarked
package org.tidewright.trials.use;

import org.jspecify.annotations.NullMarked;
