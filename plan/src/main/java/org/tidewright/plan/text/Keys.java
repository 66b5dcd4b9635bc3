package org.tidewright.plan.text;

import java.util.Locale;

/** How names in the records and words in the file correspond. */
public final class Keys {
    private Keys() {}

    /** {@code bottomHeight} is {@code bottom_height} in the file. */
    public static String ofComponent(String name) {
        StringBuilder key = new StringBuilder();
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (Character.isUpperCase(c)) {
                key.append('_');
            }
            key.append(Character.toLowerCase(c));
        }
        return key.toString();
    }

    /** {@code INTERNAL_BOX} is {@code internal_box} in the file. */
    public static String ofChoice(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT);
    }
}
