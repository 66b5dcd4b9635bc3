/* The CO2 system of seawater at one atmosphere, from total alkalinity and dissolved inorganic carbon. */
#ifndef CO2_SYSTEM_H
#define CO2_SYSTEM_H

typedef struct {
    double practical_salinity; /* PSS-78 */
    double temperature;        /* degC, ITS-90 */
    double phosphate, silicate, ammonia; /* totals, umol/kg */
    double alkalinity, dic;    /* umol/kg */
} co2_input;

/* Stoichiometric constants, mol/kg of seawater; on the total scale except ks and kf, which are on the free scale. */
typedef struct {
    double k0; /* mol/(kg atm) */
    double k1, k2, kb, kw, ks, kf, kp1, kp2, kp3, ksi, knh4;
    double ksp_aragonite, ksp_calcite; /* (mol/kg)^2 */
    double borate, sulfate, fluoride, calcium; /* totals, mol/kg */
    double fugacity_factor; /* fCO2 / pCO2 */
    double dry_share;       /* 1 - vapour pressure / atm */
    double fh;              /* H(NBS) / H(seawater scale) */
} co2_constants;

/* Concentrations in umol/kg, pressures in uatm, mole fraction in umol/mol of dry air. */
typedef struct {
    double ph_total, ph_free, ph_sws, ph_nbs;
    double fco2, pco2, xco2_dry;
    double hydrogen_free, hydroxide;
    double co2_aq, bicarbonate, carbonate;
    double borate, boric_acid;
    double h3po4, h2po4, hpo4, po4;
    double h3sio4, h4sio4;
    double nh3, nh4;
    double hso4, so4, hf, fluoride;
    double saturation_aragonite, saturation_calcite;
    double revelle_factor;
} co2_state;

void co2_constants_at(double practical_salinity, double temperature, co2_constants *constants);

/* Those that pH, gas and aragonite ask for where there is no silicate: all but ksi, ksp_calcite, dry_share and fh. */
void co2_constants_of_water(double practical_salinity, double temperature, co2_constants *constants);

/* Finds ln[H+] on the total scale from a guess in its place; mol/kg. Returns the steps taken, or 0 as below. */
int co2_hydrogen_near(double alkalinity, double dic, double phosphate, double ammonia, const co2_constants *constants,
                      double *ln_h);

/* Returns the steps taken, or 0 where no pH between 0 and 15 gives the alkalinity. */
int co2_solve(const co2_input *input, co2_state *state);

#endif
