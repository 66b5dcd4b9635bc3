package org.tidewright.twin.system;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Declaration;
import org.tidewright.twin.contract.Setting;

/** What a keeper or a failure can change in a twin, by name. */
public final class Levers {
    private final Declaration declaration;
    private final Map<String, Lever> byName = new LinkedHashMap<>();

    Levers(Declaration declaration) {
        this.declaration = declaration;
    }

    /** Declares a factor on what the plan does. */
    Setting factor(String name, String meaning) {
        return add(name, meaning, Lever.Kind.FACTOR, "1", 1);
    }

    /** Declares an amount. */
    Setting amount(String name, String meaning, String unit, @Unit("*") double initial) {
        return add(name, meaning, Lever.Kind.AMOUNT, unit, initial);
    }

    /** Declares a switch that is on at first. */
    Setting onOff(String name, String meaning) {
        return add(name, meaning, Lever.Kind.SWITCH, "1", 1);
    }

    /** Declares a float switch in order; 0 is stuck off, 2 stuck on. */
    Setting floatSwitch(String name, String meaning) {
        return add(name, meaning, Lever.Kind.FLOAT_SWITCH, "1", 1);
    }

    /** Names a setting that is there already. */
    void add(String name, String meaning, Setting setting) {
        byName.put(name, new Lever(name, meaning, Lever.Kind.SWITCH, "1", setting));
    }

    private Setting add(String name, String meaning, Lever.Kind kind, String unit, double initial) {
        Setting setting = declaration.setting(name, initial);
        byName.put(name, new Lever(name, meaning, kind, unit, setting));
        return setting;
    }

    /** All of them, in the order of the plan's parts. */
    public Collection<Lever> all() {
        return byName.values();
    }

    public Optional<Lever> named(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    /** The lever of that name, which must exist. */
    public Lever get(String name) {
        return named(name)
                .orElseThrow(() -> new IllegalArgumentException(
                        "no lever is called “" + name + "”; there are " + String.join(", ", byName.keySet())));
    }
}
