#!/usr/bin/python3
"""Fits a Gumbel distribution to Port Pirie and to five small sets with SciPy (Debian's
python3-scipy; written against 1.10.1), for scipy_gumbel_test.cpp to compare with.

One line a set: its values; location, scale, log-likelihood, level at T = 50.
"""

import csv
import pathlib

from scipy import optimize, stats

HERE = pathlib.Path(__file__).parent


def port_pirie():
    with open(HERE / "data" / "port-pirie.csv", newline="") as file:
        return [float(row["sea_level_m"]) for row in csv.DictReader(file)]


def drawn(seed, count, location, scale):
    """Depths in mm, to 0.01 as one reads them."""
    sample = stats.gumbel_r.rvs(location, scale, size=count, random_state=seed)
    return [round(float(x), 2) for x in sample]


def fit(values):
    """SciPy's own fit, then polished by a simplex: fit() alone stops at about 1e-8."""
    def loss(at):
        return -stats.gumbel_r.logpdf(values, at[0], at[1]).sum() if at[1] > 0 else float("inf")
    found = optimize.minimize(loss, stats.gumbel_r.fit(values), method="Nelder-Mead",
                              options={"xatol": 1e-11, "fatol": 1e-13, "maxiter": 5000})
    return found.x[0], found.x[1], -found.fun


def main():
    sets = [port_pirie()] + [drawn(seed, count, 0.35, 0.08)
                             for seed, count in [(1, 5), (2, 6), (3, 8), (4, 12), (5, 20)]]
    for values in sets:
        location, scale, likelihood = fit(values)
        level = stats.gumbel_r.ppf(1 - 1 / 50, location, scale)
        figures = " ".join(f"{x:.12g}" for x in (location, scale, likelihood, level))
        print(" ".join(f"{v:.12g}" for v in values) + ";" + figures)


if __name__ == "__main__":
    main()
