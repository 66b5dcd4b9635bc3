package org.tidewright.twin.forecast;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.system.SystemTwin;

/** What a forecast tells of the display's water and the room, each in the unit keepers use, which ends its key. */
public enum Quantity {
    TEMPERATURE("temperature", "temperature_c", "°C", 1) {
        @Override
        double of(View now, SystemTwin twin) {
            return now.temperature(twin.display());
        }
    },
    SALINITY("salinity", "salinity_pss", "", 1) {
        @Override
        double of(View now, SystemTwin twin) {
            return now.salinity(twin.display());
        }
    },
    PH("pH", "ph_total", "", 2) {
        @Override
        double of(View now, SystemTwin twin) {
            return now.solution(twin.display()).ph();
        }
    },
    OXYGEN("oxygen", "oxygen_mg_per_l", "mg/L", 1) {
        @Override
        double of(View now, SystemTwin twin) {
            return now.oxygen(twin.display()) * OXYGEN_MASS;
        }
    },
    OXYGEN_SATURATION("oxygen, share of saturation", "oxygen_saturation_percent", "%", 0) {
        @Override
        double of(View now, SystemTwin twin) {
            return 100
                    * now.oxygen(twin.display())
                    / now.solution(twin.display()).oxygenAtRest();
        }
    },
    CARBON_DIOXIDE("carbon dioxide in the water", "carbon_dioxide_water_uatm", "µatm", 0) {
        @Override
        double of(View now, SystemTwin twin) {
            return 1e6 * now.solution(twin.display()).partialPressure();
        }
    },
    CARBON_DIOXIDE_OF_ROOM("carbon dioxide in the room", "carbon_dioxide_room_uatm", "µatm", 0) {
        @Override
        double of(View now, SystemTwin twin) {
            return 1e6 * twin.roomAir().carbonDioxide(now);
        }
    },
    ALKALINITY("alkalinity", "alkalinity_dkh", "dKH", 2) {
        @Override
        double of(View now, SystemTwin twin) {
            return now.concentration(twin.display(), Stock.ALKALINITY) * DEGREES_PER_MOLE;
        }
    },
    CALCIUM("calcium", "calcium_mg_per_l", "mg/L", 0) {
        @Override
        double of(View now, SystemTwin twin) {
            return mass(now, twin.display(), Stock.CALCIUM, 40.078);
        }
    },
    MAGNESIUM("magnesium", "magnesium_mg_per_l", "mg/L", 0) {
        @Override
        double of(View now, SystemTwin twin) {
            return mass(now, twin.display(), Stock.MAGNESIUM, 24.305);
        }
    },
    ARAGONITE_SATURATION("saturation of aragonite", "aragonite_saturation", "", 1) {
        @Override
        double of(View now, SystemTwin twin) {
            return now.solution(twin.display()).aragoniteSaturation();
        }
    },
    AMMONIA("ammonia, as nitrogen", "ammonia_n_mg_per_l", "mg/L", 3) {
        @Override
        double of(View now, SystemTwin twin) {
            return mass(now, twin.display(), Stock.AMMONIA, NITROGEN_MASS);
        }
    },
    FREE_AMMONIA("free ammonia, as nitrogen", "free_ammonia_n_mg_per_l", "mg/L", 4) {
        @Override
        double of(View now, SystemTwin twin) {
            return AMMONIA.of(now, twin) * now.solution(twin.display()).freeAmmoniaShare();
        }
    },
    NITRITE("nitrite, as nitrogen", "nitrite_n_mg_per_l", "mg/L", 3) {
        @Override
        double of(View now, SystemTwin twin) {
            return mass(now, twin.display(), Stock.NITRITE, NITROGEN_MASS);
        }
    },
    NITRATE("nitrate", "nitrate_mg_per_l", "mg/L", 1) {
        @Override
        double of(View now, SystemTwin twin) {
            return mass(now, twin.display(), Stock.NITRATE, 62.004);
        }
    },
    PHOSPHATE("phosphate", "phosphate_mg_per_l", "mg/L", 3) {
        @Override
        double of(View now, SystemTwin twin) {
            return mass(now, twin.display(), Stock.PHOSPHATE, 94.970);
        }
    },
    LIGHT("light", "light_umol_per_m2_s", "µmol/m²/s", 0) {
        @Override
        double of(View now, SystemTwin twin) {
            return 1e6 * twin.lightOverDisplay(now);
        }
    },
    FISH("fish, live mass", "fish_g", "g", 0) {
        @Override
        double of(View now, SystemTwin twin) {
            return 1e3 * twin.fish(now);
        }
    };

    private static final double OXYGEN_MASS = 31.9988;
    private static final double NITROGEN_MASS = 14.0067;

    /** dKH in 1 mol/m³ of charge: 10 mg/L of calcium oxide, 56.077 g/mol, are one degree. */
    private static final double DEGREES_PER_MOLE = 56.077 / 20;

    private final String words;
    private final String key;
    private final String unit;
    private final int decimals;

    Quantity(String words, String key, String unit, int decimals) {
        this.words = words;
        this.key = key;
        this.unit = unit;
        this.decimals = decimals;
    }

    /** Its value, in {@link #unit()}. */
    abstract @Unit("*") double of(View now, SystemTwin twin);

    /** As a page says it. */
    public String words() {
        return words;
    }

    /** As JSON and CSV name it, its unit at the end. */
    public String key() {
        return key;
    }

    /** Symbol of its unit, empty for a plain number. */
    public String unit() {
        return unit;
    }

    /** Decimals that mean something to a keeper. */
    public int decimals() {
        return decimals;
    }

    /** mol/m³ times g/mol is mg/L. */
    private static double mass(View now, Body body, Stock stock, double gramsPerMole) {
        return now.concentration(body, stock) * gramsPerMole;
    }
}
