"""Times the compiled C of the TEOS-10 toolbox GSW over the points, on one core, through its Python package.

    python3 bench/peers/seawater/gsw_times.py      # a python3 with numpy and gsw; Debian: apt install python3-gsw

Calls the compiled loops themselves, with the array for the result at hand, so that what is timed is C: one call for
100,000 points. Prints name, median and best nanoseconds a point, and the mean of the results.
"""

import os

os.environ["OMP_NUM_THREADS"] = "1"

import sys
import time

try:
    import numpy as np
    from gsw import _gsw_ufuncs as gsw
except ImportError as missing:
    sys.exit(f"no GSW for {sys.executable} ({missing}): apt install python3-gsw")

POINTS = 100_000
ROUNDS = 7
WARM_UP_SECONDS = 1.0
ROUND_SECONDS = 0.4


def draws(which):
    """Draw number 7 i + which of SplitMix64 for each point i, from 0 to 1; see points.c."""
    n = np.arange(POINTS, dtype=np.uint64) * np.uint64(7) + np.uint64(which + 1)
    z = np.uint64(20240) + n * np.uint64(0x9E3779B97F4A7C15)
    z = (z ^ (z >> np.uint64(30))) * np.uint64(0xBF58476D1CE4E5B9)
    z = (z ^ (z >> np.uint64(27))) * np.uint64(0x94D049BB133111EB)
    z ^= z >> np.uint64(31)
    return (z >> np.uint64(11)).astype(float) / 9007199254740992.0


SP = 30 + 8 * draws(0)
T = 20 + 10 * draws(1)
CONDUCTIVITY_MS_CM = 10 * (5.3 * (SP / 35) * (1 + 0.02 * (T - 25)))
SA = SP * (35.16504 / 35)
CT = gsw.ct_from_t(SA, T, 0.0)

result = np.empty(POINTS)
scratch = np.empty(POINTS)
scratch2 = np.empty(POINTS)


def density_from_practical():
    np.multiply(SP, 35.16504 / 35, out=scratch)
    gsw.ct_from_t(scratch, T, 0.0, out=scratch2)
    gsw.rho(scratch, scratch2, 0.0, out=result)


FUNCTIONS = {
    "practical_salinity": lambda: gsw.sp_from_c(CONDUCTIVITY_MS_CM, T, 0.0, out=result),
    "oxygen_solubility": lambda: gsw.o2sol_sp_pt(SP, T, out=result),
    "teos10_density": lambda: gsw.rho(SA, CT, 0.0, out=result),
    "teos10_density_from_practical": density_from_practical,
    "teos10_density_exact": lambda: gsw.rho_t_exact(SA, T, 0.0, out=result),
    "teos10_thermal_expansion": lambda: gsw.alpha(SA, CT, 0.0, out=result),
    "teos10_haline_contraction": lambda: gsw.beta(SA, CT, 0.0, out=result),
    "teos10_specific_heat": lambda: gsw.cp_t_exact(SA, T, 0.0, out=result),
}


def time_for(least_seconds, run):
    """Nanoseconds a point, over at least so long."""
    began = time.perf_counter()
    passes = 0
    took = 0.0
    while took < least_seconds:
        run()
        passes += 1
        took = time.perf_counter() - began
    return 1e9 * took / (passes * POINTS)


def main():
    print("name,ns_per_point,best_ns_per_point,mean_result")
    for name, run in FUNCTIONS.items():
        time_for(WARM_UP_SECONDS, run)
        rounds = sorted(time_for(ROUND_SECONDS, run) for _ in range(ROUNDS))
        print(f"{name},{rounds[ROUNDS // 2]:.3f},{rounds[0]:.3f},{result.mean():.15g}", flush=True)


main()
