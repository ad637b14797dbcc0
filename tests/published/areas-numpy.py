"""Figures weighted by area, computed by numpy and scipy in ways of their own.

Run with Debian's python3-scipy:  /usr/bin/python3 tests/published/areas-numpy.py
Writes areas-numpy.json beside itself.

The low quarter is read off the cumulative catch over the cumulative area with numpy.interp, so a can on the boundary is
cut in part; the catch of a share is looked for among all catches by summing the areas that reach each. Intervals are those
of scipy.stats.bootstrap over the numbers of the cans, so that catch and area stay together; the standard error of an end
with 2,000 resamples is the standard deviation of that end over 200 runs with different seeds.
"""

import json
import math
import pathlib

import numpy as np
import scipy
from scipy.stats import bootstrap

HERE = pathlib.Path(__file__).parent
LEVEL = 0.9
TEST = {"minutes": 20, "mouth": 100, "depth": 6, "area": 180, "days": 300, "price": 2.5, "share": 0.8}
SHARES = [0.5, 0.6, 0.75, 0.8, 0.9, 1]


def areas_of(across, along, width, length):
    def strips(places, side):
        middles = (np.array(places[1:]) + np.array(places[:-1])) / 2
        return np.diff(np.concatenate([[0], middles, [side]]))
    return np.outer(strips(along, length), strips(across, width))


def grid(values, columns):
    return [values[i:i + columns] for i in range(0, len(values), columns)]


rng = np.random.default_rng(20_250_301)
INSIDE = ([0.3, 3.15, 6, 8.85, 11.7], [0.3, 4.15, 8, 11.85, 15.7], 12, 16)
CATCHES = [
    18, 22, 25, 23, 17, 24, 31, 33, 30, 25, 26, 34, 35, 33, 27, 25, 32, 34, 31, 24, 16, 23, 27, 24, 19,
]

BEDS = [
    {"bed": "25 cans, the outer ones 0.3 m inside the edge", "readings": grid(CATCHES, 5),
     "areas": areas_of(*INSIDE).tolist()},
    {"bed": "cans that were not read, whose areas are blank, 0 or a word",
     "readings": [[12, "x", 15.5, 9], ["", 14, " X ", 11.25], [10, 13, 8.5, ""]],
     "areas": [[2, "", 1.5, 0.75], [0, 3, "none", 2.25], [1, 1, 0.5, -4]]},
    {"bed": "ties on both sides of the quarter", "readings": [[5, 5, 5, 8, 8, 8, 8, 9, 9, 5]],
     "areas": [[1, 2, 0.5, 3, 1, 1, 2, 4, 1, 0.25]]},
    {"bed": "a can on the boundary cut in part", "readings": [[3], [1], [8], [9]], "areas": [[4], [2], [3], [1]]},
    {"bed": "the quarter ends exactly at a can", "readings": [[4, 6, 7, 9]], "areas": [[1, 1, 1, 1]]},
    {"bed": "ten areas of 0.1, shares at exact boundaries", "readings": [[11, 12, 13, 14, 15, 16, 17, 18, 19, 20]],
     "areas": [[0.1] * 10]},
    {"bed": "areas from 1e-6 to 1e6", "readings": [[7.5, 9, 12, 6, 10, 11, 8, 14]],
     "areas": [[1e-6, 1e6, 1, 1e-3, 1e3, 1e5, 1e-5, 20]]},
    {"bed": "nearly all the ground in the driest can", "readings": [[2, 20, 20, 30]], "areas": [[97, 1, 1, 1]]},
    {"bed": "readings in a column, areas in mm²", "readings": [[10.5], [12.25], [9.75], [14], [8.5], [11]],
     "areas": [[6.25e6], [4e6], [2.5e6], [1e6], [7.75e6], [3e6]]},
    {"bed": "60 cans drawn at random", "readings": grid(np.round(rng.uniform(2, 40, 60), 2).tolist(), 6),
     "areas": grid(np.round(rng.lognormal(0, 1, 60), 4).tolist(), 6)},
    {"bed": "28 catches of 17 digits, each twice with another area",
     "readings": grid(np.repeat(rng.uniform(5, 9, 14), 2).tolist(), 7),
     "areas": grid(rng.uniform(0.5, 2, 28).tolist(), 7)},
    {"bed": "equal areas, cans that do not divide by four", "readings": [[9, 14, 11, 10, 16, 12, 13]],
     "areas": [[2.5] * 7]},
]


def counted(bed):
    pairs = [
        (x, a) for xs, areas in zip(bed["readings"], bed["areas"]) for x, a in zip(xs, areas)
        if not (isinstance(x, str) and x.strip().lower() in ("", "x"))
    ]
    return np.array([x for x, _ in pairs], float), np.array([a for _, a in pairs], float)


def low_quarter(x, a):
    order = np.argsort(x, kind="stable")
    ground = np.concatenate([[0], np.cumsum(a[order])])
    caught = np.concatenate([[0], np.cumsum(a[order] * x[order])])
    quarter = a.sum() / 4
    return np.interp(quarter, ground, caught) / quarter


def reached(x, a, share):
    wanted = share * a.sum() - 1e-9 * a.mean()
    return max(y for y in x if a[x >= y].sum() >= wanted)


def figures(x, a):
    m = np.average(x, weights=a)
    rate = m * 1000 / (math.pi * TEST["mouth"] ** 2 / 4) * 60 / TEST["minutes"]
    coefficients = {"can": m / x.min(), "quarter": m / low_quarter(x, a)}
    shares = {str(share): m / reached(x, a, share) for share in SHARES}
    water = {
        basis: TEST["area"] * TEST["depth"] * TEST["days"] * times / TEST["share"] / 1000
        for basis, times in (coefficients | shares).items()
    }
    return {
        "MAR": rate,
        "CU.CHRISTIANSEN": 100 * (1 - np.average(np.abs(x - m), weights=a) / m),
        "DU.QUARTER": 100 * low_quarter(x, a) / m,
        "SC.CAN": coefficients["can"],
        "SC.QUARTER": coefficients["quarter"],
        "SC.SHARE": shares,
        "RUNTIME": {basis: 60 * TEST["depth"] / rate * times for basis, times in (coefficients | shares).items()},
        "WATER.ANNUAL": water,
        "COST.ANNUAL": {basis: volume * TEST["price"] for basis, volume in water.items()},
    }


def many_low_quarters(x, a):
    order = np.argsort(x, axis=-1)
    x, a = np.take_along_axis(x, order, -1), np.take_along_axis(a, order, -1)
    quarter = a.sum(axis=-1, keepdims=True) / 4
    before = np.cumsum(a, axis=-1) - a
    taken = np.clip(quarter - before, 0, a)
    return (taken * x).sum(axis=-1) / quarter[..., 0]


def mean(x, a):
    return (a * x).sum(axis=-1) / a.sum(axis=-1)


def christiansen(x, a):
    m = mean(x, a)
    return 100 * (1 - (a * np.abs(x - m[..., None])).sum(axis=-1) / a.sum(axis=-1) / m)


INDICES = {
    "MEAN": mean,
    "CU.CHRISTIANSEN": christiansen,
    "DU.QUARTER": lambda x, a: 100 * many_low_quarters(x, a) / mean(x, a),
}


def ends(x, a, index, resamples, seed):
    def statistic(cans, axis=-1):
        cans = np.moveaxis(cans, axis, -1).astype(int)
        return index(x[cans], a[cans])
    found = bootstrap(
        (np.arange(x.size),), statistic, n_resamples=resamples, confidence_level=LEVEL, method="BCa",
        vectorized=True, axis=-1, batch=20_000, random_state=seed,
    ).confidence_interval
    return found.low, found.high


def interval(x, a, name):
    low, high = ends(x, a, INDICES[name], 200_000, 1)
    error = np.array([ends(x, a, INDICES[name], 2_000, seed) for seed in range(2, 202)]).std(axis=0, ddof=1)
    return {"index": name, "low": low, "high": high, "standardErrors": {"low": error[0], "high": error[1]}}


for bed in BEDS:
    x, a = counted(bed)
    bed["expected"] = figures(x, a)
    bed["intervals"] = [interval(x, a, name) for name in INDICES] if x.size >= 16 else []

GRIDS = [INSIDE, ([2], [1, 3, 7.5], 6, 9), ([0, 2, 5], [0.5], 5, 2)]

(HERE / "areas-numpy.json").write_text(json.dumps({
    "source": {
        "author": "The NumPy and SciPy communities", "year": "2023",
        "title": f"numpy {np.__version__} (average, interp, cumsum) and scipy.stats.bootstrap {scipy.__version__}",
        "place": "Debian package python3-scipy; made by areas-numpy.py",
    },
    "test": TEST, "level": LEVEL, "beds": BEDS,
    "grids": [
        {"across": across, "along": along, "width": width, "length": length,
         "areas": areas_of(across, along, width, length).tolist()}
        for across, along, width, length in GRIDS
    ],
}, indent=1) + "\n")
