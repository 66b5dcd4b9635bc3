package org.tidewright.bench;

import java.io.PrintWriter;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.List;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Drawn;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.mechanism.air.Weather;
import org.tidewright.twin.mechanism.power.Supply;
import org.tidewright.twin.mechanism.water.SteadyDose;

/**
 * Writes the numbers a mechanism was built with, as lines of a path and a value. It reads their fields, so that no number
 * of a plan has to be offered in public only for this; equations and recipes it leaves out.
 */
final class MechanismFields {
    private final PrintWriter out;
    private final View start;

    MechanismFields(PrintWriter out, View start) {
        this.out = out;
        this.start = start;
    }

    void write(Mechanism mechanism) throws IllegalAccessException {
        out.println("mechanism\t" + mechanism.getClass().getSimpleName() + "\t" + mechanism.name());
        fieldsOf("", mechanism);
    }

    private void fieldsOf(String prefix, Object owner) throws IllegalAccessException {
        for (Field field : owner.getClass().getDeclaredFields()) {
            if (!Modifier.isStatic(field.getModifiers())) {
                field.setAccessible(true);
                Object value = field.get(owner);
                if (value != null) {
                    line(prefix + field.getName().replace("val$", ""), value);
                }
            }
        }
    }

    private void line(String path, Object value) throws IllegalAccessException {
        if (value instanceof Number number) {
            out.println("of\t" + path + "\t" + number.doubleValue());
        } else if (value instanceof Drawn drawn) {
            out.println("of\t" + path + "\t" + drawn.usual());
        } else if (value instanceof Setting setting) {
            out.println("of\t" + path + "\t" + setting.initial());
        } else if (value instanceof Supply supply) {
            out.println("of\t" + path + "\t" + (supply.isOn(start) ? 1 : 0));
        } else if (value instanceof Weather weather) {
            out.println("of\t" + path + "\t" + weather.temperature(0));
        } else if (value instanceof Body body) {
            out.println("at\t" + path + "\t" + body.name());
        } else if (value instanceof Enum<?> constant) {
            out.println("at\t" + path + "\t" + constant.name());
        } else if (value instanceof SteadyDose.Pouring pouring) {
            DeedRecord poured = new DeedRecord(start);
            pouring.pour(start, poured, 1);
            poured.writePours(out, path);
        } else if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                line(path + "." + i, list.get(i));
            }
        } else if (value instanceof Object[] array) {
            line(path, List.of(array));
        } else if (isOfMechanisms(value)) {
            fieldsOf(path + ".", value);
        }
    }

    private static boolean isOfMechanisms(Object value) {
        Class<?> kind = value.getClass();
        return !kind.isHidden()
                && (kind.getName().startsWith("org.tidewright.twin.mechanism.")
                        || kind.getName().startsWith("org.tidewright.twin.law."));
    }
}
