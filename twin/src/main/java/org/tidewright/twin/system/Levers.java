package org.tidewright.twin.system;

import java.util.List;
import java.util.Optional;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.run.Network;

/** What a keeper or a failure can change in a twin, by name. */
public final class Levers {
    private final Network network;

    Levers(Network network) {
        this.network = network;
    }

    /** All of them. */
    public List<Setting> all() {
        return network.settings();
    }

    public Optional<Setting> named(String name) {
        return network.settings().stream()
                .filter(setting -> setting.name().equals(name))
                .findFirst();
    }

    /** The lever of that name, which must exist. */
    public Setting get(String name) {
        return named(name)
                .orElseThrow(() -> new IllegalArgumentException("no lever is called “" + name + "”; there are "
                        + network.settings().stream().map(Setting::name).toList()));
    }
}
