/* Reads "S t phosphate silicate ammonia alkalinity dic" a line, and writes one CSV row of the solved state each, headed
   by the names of the columns. */
#include "co2_system.h"

#include <stddef.h>
#include <stdio.h>

typedef struct {
    const char *name;
    size_t offset;
    double scale;
} column;

#define OF(type, name, field, scale) {name, offsetof(type, field), scale}

static const column STATE[] = {
    OF(co2_state, "ph_total", ph_total, 1),
    OF(co2_state, "ph_free", ph_free, 1),
    OF(co2_state, "ph_sws", ph_sws, 1),
    OF(co2_state, "ph_nbs", ph_nbs, 1),
    OF(co2_state, "pco2_uatm", pco2, 1),
    OF(co2_state, "fco2_uatm", fco2, 1),
    OF(co2_state, "xco2_dry_umol_mol", xco2_dry, 1),
    OF(co2_state, "hydrogen_free_umol_kg", hydrogen_free, 1),
    OF(co2_state, "hydroxide_umol_kg", hydroxide, 1),
    OF(co2_state, "co2_aq_umol_kg", co2_aq, 1),
    OF(co2_state, "bicarbonate_umol_kg", bicarbonate, 1),
    OF(co2_state, "carbonate_umol_kg", carbonate, 1),
    OF(co2_state, "borate_umol_kg", borate, 1),
    OF(co2_state, "boric_acid_umol_kg", boric_acid, 1),
    OF(co2_state, "h3po4_umol_kg", h3po4, 1),
    OF(co2_state, "h2po4_umol_kg", h2po4, 1),
    OF(co2_state, "hpo4_umol_kg", hpo4, 1),
    OF(co2_state, "po4_umol_kg", po4, 1),
    OF(co2_state, "h3sio4_umol_kg", h3sio4, 1),
    OF(co2_state, "nh3_umol_kg", nh3, 1),
    OF(co2_state, "nh4_umol_kg", nh4, 1),
    OF(co2_state, "hso4_umol_kg", hso4, 1),
    OF(co2_state, "hf_umol_kg", hf, 1),
    OF(co2_state, "saturation_calcite", saturation_calcite, 1),
    OF(co2_state, "saturation_aragonite", saturation_aragonite, 1),
    OF(co2_state, "revelle_factor", revelle_factor, 1),
};

static const column CONSTANTS[] = {
    OF(co2_constants, "k0_mol_kg_atm", k0, 1),
    OF(co2_constants, "k1_total", k1, 1),
    OF(co2_constants, "k2_total", k2, 1),
    OF(co2_constants, "kb_total", kb, 1),
    OF(co2_constants, "kw_total", kw, 1),
    OF(co2_constants, "ks_free", ks, 1),
    OF(co2_constants, "kf_free_dickson_riley", kf, 1),
    OF(co2_constants, "kp1_total", kp1, 1),
    OF(co2_constants, "kp2_total", kp2, 1),
    OF(co2_constants, "kp3_total", kp3, 1),
    OF(co2_constants, "ksi_total", ksi, 1),
    OF(co2_constants, "knh4_total", knh4, 1),
    OF(co2_constants, "ksp_aragonite", ksp_aragonite, 1),
    OF(co2_constants, "ksp_calcite", ksp_calcite, 1),
    OF(co2_constants, "total_borate_umol_kg", borate, 1e6),
    OF(co2_constants, "total_borate_uppstrom_umol_kg", borate, 1e6),
    OF(co2_constants, "total_sulfate_umol_kg", sulfate, 1e6),
    OF(co2_constants, "total_fluoride_umol_kg", fluoride, 1e6),
    OF(co2_constants, "total_calcium_umol_kg", calcium, 1e6),
    OF(co2_constants, "fugacity_factor", fugacity_factor, 1),
    OF(co2_constants, "vapour_pressure_factor", dry_share, 1),
    OF(co2_constants, "fh", fh, 1),
};

#define COUNT(columns) (sizeof(columns) / sizeof((columns)[0]))

static void write_values(const column *columns, size_t count, const void *values) {
    for (size_t c = 0; c < count; c++) {
        printf(",%.17g", columns[c].scale * *(const double *) ((const char *) values + columns[c].offset));
    }
}

int main(void) {
    printf("steps");
    for (size_t c = 0; c < COUNT(STATE); c++) {
        printf(",%s", STATE[c].name);
    }
    for (size_t c = 0; c < COUNT(CONSTANTS); c++) {
        printf(",%s", CONSTANTS[c].name);
    }
    printf("\n");
    co2_input in;
    while (scanf("%lf %lf %lf %lf %lf %lf %lf", &in.practical_salinity, &in.temperature, &in.phosphate, &in.silicate,
                 &in.ammonia, &in.alkalinity, &in.dic) == 7) {
        co2_constants constants;
        co2_state state;
        co2_constants_at(in.practical_salinity, in.temperature, &constants);
        const int steps = co2_solve(&in, &state);
        if (steps == 0) {
            fprintf(stderr, "no pH for alkalinity %g and DIC %g umol/kg\n", in.alkalinity, in.dic);
            return 1;
        }
        printf("%d", steps);
        write_values(STATE, COUNT(STATE), &state);
        write_values(CONSTANTS, COUNT(CONSTANTS), &constants);
        printf("\n");
    }
    return 0;
}
