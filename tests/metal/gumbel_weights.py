#!/usr/bin/python3
"""Weights and bounds for the deepest pit of an area, for src/metal/gumbel_table.cpp (Debian's
python3-scipy; written against 1.10.1).

    gumbel_weights.py --table > src/metal/gumbel_table.cpp     write the whole table anew
    gumbel_weights.py --draws 100000 5 20                      figures of 5 and of 20 patches

The weights are those of the best linear unbiased estimate of a Gumbel distribution's location and
scale (generalized least squares on the order statistics, Lloyd 1952), from the means and
covariances of n ordered values, integrated numerically.

The bounds are multiples k of the estimated scale s over the likely deepest of m patches not read,
l + s (ln m + 0.3665): so that the deepest of the m is no deeper in 97.5 % of all cases. Estimates
are drawn; for each the chance that the deepest of m stays under its bound is known exactly, and k
is where their mean is .975.
"""

import argparse

import numpy
from scipy import linalg, optimize, special

COVERED = 0.975
UNREAD = (1, 2, 5, 10, 20, 50, 100, 200, 500)
FEWEST, MOST = 5, 20
MEDIAN = -numpy.log(numpy.log(2))
SEED = 1994


def nodes(step=1 / 24, reach=3.7):
    """Tanh-sinh nodes in (0, 1) with their complements, exact near both ends, and their weights."""
    t = numpy.arange(-reach, reach + step / 2, step)
    h = numpy.pi / 2 * numpy.sinh(t)
    u, rest = special.expit(2 * h), special.expit(-2 * h)
    return u, rest, step * numpy.pi * numpy.cosh(t) * u * rest


def reduced(u, rest):
    """The standard Gumbel value that isn't exceeded with the chance u = 1 - rest."""
    return -numpy.log(-numpy.where(u < 0.5, numpy.log(u), numpy.log1p(-numpy.minimum(rest, 0.5))))


def moments(n):
    """Means and covariances of n ordered standard Gumbel values.

    The j-th of n uniform values is Beta(j, n - j + 1); the i-th below it is the j-th times an
    independent Beta(i, j - i).
    """
    u, rest, weight = nodes()

    def beta(a, b):
        return weight * numpy.exp(special.xlogy(a - 1, u) + special.xlogy(b - 1, rest)
                                  - special.betaln(a, b))

    value = reduced(u, rest)
    below = reduced(u[:, None] * u, rest[:, None] + u[:, None] * rest)  # 1 - u w, no digit lost
    upper = [beta(j, n - j + 1) for j in range(1, n + 1)]
    mean = numpy.array([row @ value for row in upper])
    product = numpy.empty((n, n))
    for j in range(n):
        product[j, j] = upper[j] @ value**2
        for i in range(j):
            product[i, j] = product[j, i] = (upper[j] * value) @ below @ beta(i + 1, j - i)
    return mean, product - numpy.outer(mean, mean)


def weights(n):
    """Two rows, smallest value first: for the location and for the scale."""
    mean, covariance = moments(n)
    design = numpy.column_stack([numpy.ones(n), mean])
    solved = linalg.solve(covariance, design, assume_a="pos")
    return linalg.solve(design.T @ solved, solved.T)


def bounds(n, rows, draws):
    """k for each count of patches not read."""
    random = numpy.random.default_rng([SEED, n])
    ordered = numpy.sort(random.gumbel(size=(draws, n)), axis=1)
    location, scale = (ordered @ row for row in rows)

    def factor(unread):
        def over(k):
            bound = location + scale * (numpy.log(unread) + MEDIAN + k)
            return numpy.exp(-unread * numpy.exp(-bound)).mean() - COVERED
        return optimize.brentq(over, 0, 40, xtol=1e-5)

    return [factor(unread) for unread in UNREAD]


def cpp(found):
    def listed(values, digits):
        return "{" + ", ".join(f"{v:.{digits}f}" for v in values) + "}"

    lines = ['// Written by tests/metal/gumbel_weights.py, then by clang-format; not by hand.',
             '#include "metal/gumbel_table.hpp"', '', 'namespace tinworm::metal {', 'namespace {', '',
             f'constexpr std::array<GumbelRow, {len(found)}> rows = {{{{']
    for n, rows, factors in found:
        lines += [f"// {n} patches", "{" + listed(rows[0], 10) + ",", listed(rows[1], 10) + ",",
                  listed(factors, 3) + "},"]
    lines += ["}};", "", "}  // namespace", "",
              "const GumbelRow& gumbel_row(std::size_t patches) {",
              "  return rows.at(patches - fewest_patches);", "}", "",
              "}  // namespace tinworm::metal"]
    return "\n".join(lines)


def main():
    asked = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    asked.add_argument("patches", type=int, nargs="*")
    asked.add_argument("--draws", type=int, default=1_000_000)
    asked.add_argument("--table", action="store_true", help="as C++")
    asked = asked.parse_args()
    counts = asked.patches or range(FEWEST, MOST + 1)
    found = []
    for n in counts:
        rows = weights(n)
        found.append((n, rows, bounds(n, rows, asked.draws)))
    if asked.table:
        print(cpp(found))
        return
    for n, rows, factors in found:  # one line each: n; locations; scales; factors
        parts = ([n], *rows, factors)
        print(";".join(" ".join(f"{float(v):.12g}" for v in part) for part in parts))


if __name__ == "__main__":
    main()
