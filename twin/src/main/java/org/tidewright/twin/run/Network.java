package org.tidewright.twin.run;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Declaration;
import org.tidewright.twin.contract.Derived;
import org.tidewright.twin.contract.Drawn;
import org.tidewright.twin.contract.Layout;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Routine;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Shape;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Watch;

/**
 * Bodies and the mechanisms between them, assembled and unchanging; any number of runs may share one.
 *
 * <p>Water is counted in volume at one reference density: the 0.3 % by which seawater swells from 20 to 30 °C moves no
 * level by more than its measuring error, and so volume is conserved exactly.
 */
public final class Network {
    private final List<Body> bodies;
    private final List<Parameter> parameters;
    private final List<Setting> settings;
    private final List<Mechanism> mechanisms;
    private final List<Watch> watches;
    private final List<Routine> routines;
    private final Layout layout;
    private final int size;
    private final int unread;
    private final int derived;
    private final double density;
    private final double specificHeat;

    private Network(Builder builder) {
        bodies = List.copyOf(builder.bodies);
        parameters = List.copyOf(builder.parameters);
        settings = List.copyOf(builder.settings);
        mechanisms = List.copyOf(builder.mechanisms);
        List<Watch> all = new ArrayList<>(builder.watches);
        mechanisms.forEach(mechanism -> all.addAll(mechanism.watches()));
        watches = List.copyOf(all);
        routines = List.copyOf(builder.routines);
        layout = builder.layout;
        size = builder.places;
        unread = builder.unread;
        derived = builder.derived;
        density = builder.density;
        specificHeat = builder.specificHeat;
    }

    public List<Body> bodies() {
        return bodies;
    }

    public List<Parameter> parameters() {
        return parameters;
    }

    public List<Setting> settings() {
        return settings;
    }

    public List<Mechanism> mechanisms() {
        return mechanisms;
    }

    public List<Watch> watches() {
        return watches;
    }

    public List<Routine> routines() {
        return routines;
    }

    /** Number of stocks of all bodies together. */
    public int size() {
        return size;
    }

    /** How many of them, the first ones, belong to the world around: no mechanism reads them. */
    int unread() {
        return unread;
    }

    /** How many numbers are worked out once a run. */
    int derived() {
        return derived;
    }

    /** Which stocks its waters hold. */
    public Layout layout() {
        return layout;
    }

    /** Density of the water throughout. */
    public @Unit("kg/m^3") double density() {
        return density;
    }

    /** Specific heat of the water throughout. */
    public @Unit("J/(kg*K)") double specificHeat() {
        return specificHeat;
    }

    /** The body with this name. */
    public Body body(String name) {
        return bodies.stream()
                .filter(body -> body.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no body is called " + name + " among " + bodies));
    }

    /** The parameters' usual values, in their order. */
    public @Unit("*") double[] usualParameters() {
        return parameters.stream().mapToDouble(Parameter::usual).toArray();
    }

    /** Collects the parts of a network. */
    public static final class Builder implements Declaration {
        private final List<Body> bodies = new ArrayList<>();
        private final List<Parameter> parameters = new ArrayList<>();
        private final List<Setting> settings = new ArrayList<>();
        private final List<Mechanism> mechanisms = new ArrayList<>();
        private final List<Watch> watches = new ArrayList<>();
        private final List<Routine> routines = new ArrayList<>();
        private final Set<String> names = new HashSet<>();
        private final Layout layout;
        private int places;
        private int unread;
        private int derived;
        private final double density;
        private final double specificHeat;

        public Builder(Layout layout, @Unit("kg/m^3") double density, @Unit("J/(kg*K)") double specificHeat) {
            this.layout = layout;
            this.density = density;
            this.specificHeat = specificHeat;
        }

        @Override
        public Body body(String name, Shape shape, double bottomHeight, double solidHeatCapacity) {
            return placed(name, layout.stocks(), shape, bottomHeight, solidHeatCapacity, false);
        }

        @Override
        public Body outside(String name) {
            if (places > unread) {
                throw new IllegalArgumentException(
                        "“" + name + "” belongs to the world around, which is declared first");
            }
            Body body = placed(name, layout.stocks(), Shape.none(), 0, 0, true);
            unread = places;
            return body;
        }

        @Override
        public Body pool(String name, Stock... holds) {
            return placed(name, List.of(holds), Shape.none(), 0, 0, false);
        }

        private Body placed(
                String name,
                List<Stock> held,
                Shape shape,
                double bottomHeight,
                double solidHeatCapacity,
                boolean outside) {
            Body body = new Body(
                    unique("body " + name, name),
                    bodies.size(),
                    held,
                    places,
                    shape,
                    bottomHeight,
                    solidHeatCapacity,
                    outside);
            bodies.add(body);
            places += held.size();
            return body;
        }

        @Override
        public Parameter parameter(
                String name, String unit, double usual, double low, double high, Basis basis, String source) {
            Parameter parameter = new Parameter(
                    parameters.size(), unique("parameter " + name, name), unit, usual, low, high, basis, source);
            parameters.add(parameter);
            return parameter;
        }

        @Override
        public Drawn derived(Drawn number) {
            return new Derived(derived++, number);
        }

        @Override
        public Setting setting(String name, double initial) {
            Setting setting = new Setting(settings.size(), unique("setting " + name, name), initial);
            settings.add(setting);
            return setting;
        }

        /** Heat of a volume of water per kelvin. */
        public @Unit("J/(m^3*K)") double heatPerVolume() {
            return density * specificHeat;
        }

        public Builder add(Mechanism mechanism) {
            mechanisms.add(mechanism);
            return this;
        }

        public Builder watch(Watch watch) {
            watches.add(watch);
            return this;
        }

        public Builder add(Routine routine) {
            routines.add(routine);
            return this;
        }

        public Network build() {
            return new Network(this);
        }

        private String unique(String key, String name) {
            if (!names.add(key)) {
                throw new IllegalArgumentException("there is already a " + key);
            }
            return name;
        }
    }
}
