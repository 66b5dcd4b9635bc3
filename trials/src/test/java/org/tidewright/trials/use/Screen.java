package org.tidewright.trials.use;

import com.microsoft.playwright.options.ColorScheme;

/** What a reader looks at: a desk or a phone, by day or by night. */
public enum Screen {
    DESK_LIGHT(1280, 800, ColorScheme.LIGHT),
    DESK_DARK(1280, 800, ColorScheme.DARK),
    PHONE_LIGHT(390, 844, ColorScheme.LIGHT),
    PHONE_DARK(390, 844, ColorScheme.DARK);

    final int width;
    final int height;
    final ColorScheme scheme;

    Screen(int width, int height, ColorScheme scheme) {
        this.width = width;
        this.height = height;
        this.scheme = scheme;
    }
}
