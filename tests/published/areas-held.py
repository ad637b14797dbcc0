"""More beds by area, of kinds that areas-numpy.py has not, computed by numpy in another way.

Run with python3 that has numpy and scipy:  python3 tests/published/areas-held.py
Writes areas-held.json beside itself.

Every bed is a grid with places, so that sheets can be filled in with it. Each can is spread over the interval of ground
(0 to 1) that it takes when the cans are put in order; the low quarter is the part of these intervals below 0.25. The share
that drains is summed over the cans for the multiplier of the low quarter. Intervals: scipy.stats.bootstrap over the
numbers of the cans; the standard error of an end with 2,000 resamples is its standard deviation over 100 seeds.
"""

import json
import math
import pathlib

import numpy as np
import scipy
from scipy.stats import bootstrap

HERE = pathlib.Path(__file__).parent
RNG = np.random.default_rng(77_041)
TEST = {"minutes": 20, "mouth": 100, "depth": 6, "area": 180, "days": 300, "price": 2.5, "share": 0.8}
SHARES = ["0.5", "0.6", "0.75", "0.9", "1"]


def edges(places, side):
    return [0, *((a + b) / 2 for a, b in zip(places, places[1:])), side]


def bed(name, readings, across, along, width, length, intervals=False):
    areas = [[h * w for w in np.diff(edges(across, width))] for h in np.diff(edges(along, length))]
    read = [[isinstance(x, (int, float)) for x in row] for row in readings]
    x = np.array([v for row in readings for v in row if isinstance(v, (int, float))], float)
    a = np.array([v for row, ok in zip(areas, read) for v, keep in zip(row, ok) if keep])
    # the area of a can that was not read may be anything: left blank here
    given = [[v if keep else "" for v, keep in zip(row, ok)] for row, ok in zip(areas, read)]
    return {
        "bed": name, "readings": readings, "areas": given, "across": across, "along": along, "width": width,
        "length": length, "expected": figures(x, a), "drained": drained(x, a),
        "intervals": [interval(x, a, index) for index in INDICES] if intervals else [],
    }


def low_quarter(x, a):
    order = np.lexsort((a, x))
    ends = np.cumsum(a[order]) / a.sum()
    below = np.minimum(ends, 0.25) - np.minimum(np.concatenate([[0], ends[:-1]]), 0.25)
    return (below * x[order]).sum() / 0.25


def of_share(x, a, share):
    reached = (x[:, None] >= x[None, :]).T @ a
    return x[reached >= share * a.sum() - 1e-9 * a.mean()].max()


def figures(x, a):
    m = (a / a.sum()) @ x
    rate = m / (math.pi / 4 * (TEST["mouth"] / 10) ** 2) * 10 * 3 * 20 / TEST["minutes"]
    times = {"can": m / x.min(), "quarter": m / low_quarter(x, a)}
    shares = {share: m / of_share(x, a, float(share)) for share in SHARES}
    both = times | shares
    kl = {basis: k * TEST["area"] * TEST["depth"] * TEST["days"] / (1000 * TEST["share"]) for basis, k in both.items()}
    return {
        "MAR": rate, "CU.CHRISTIANSEN": 100 - 100 * ((a / a.sum()) @ abs(x - m)) / m,
        "DU.QUARTER": 100 * low_quarter(x, a) / m, "SC.CAN": times["can"], "SC.QUARTER": times["quarter"],
        "SC.SHARE": shares, "RUNTIME": {basis: k * TEST["depth"] / (rate / 60) for basis, k in both.items()},
        "WATER.ANNUAL": kl, "COST.ANNUAL": {basis: v * TEST["price"] for basis, v in kl.items()},
    }


def drained(x, a):
    m = (a / a.sum()) @ x
    falls = m / low_quarter(x, a) * TEST["depth"] * x / m
    return float(a @ np.clip(falls - TEST["depth"], 0, None) / (a @ falls))


def quarter_of_many(x, a):
    order = np.argsort(x, axis=-1)
    x, a = np.take_along_axis(x, order, -1), np.take_along_axis(a, order, -1)
    ends = np.cumsum(a, axis=-1) / a.sum(axis=-1, keepdims=True)
    starts = np.concatenate([np.zeros_like(ends[..., :1]), ends[..., :-1]], axis=-1)
    return ((np.minimum(ends, 0.25) - np.minimum(starts, 0.25)) * x).sum(axis=-1) / 0.25


def mean(x, a):
    return (a * x).sum(axis=-1) / a.sum(axis=-1)


INDICES = {
    "MEAN": mean,
    "CU.CHRISTIANSEN": lambda x, a: 100 - 100 * (a * abs(x - mean(x, a)[..., None])).sum(-1) / (a * x).sum(-1),
    "DU.QUARTER": lambda x, a: 100 * quarter_of_many(x, a) / mean(x, a),
}


def ends_of(x, a, index, resamples, seed):
    found = bootstrap(
        (np.arange(x.size),), lambda cans, axis=-1: index(x[cans.astype(int)], a[cans.astype(int)]),
        n_resamples=resamples, confidence_level=0.9, method="BCa", vectorized=True, axis=-1, batch=10_000,
        random_state=seed,
    ).confidence_interval
    return found.low, found.high


def interval(x, a, name):
    low, high = ends_of(x, a, INDICES[name], 100_000, 1)
    error = np.array([ends_of(x, a, INDICES[name], 2_000, seed) for seed in range(2, 102)]).std(axis=0, ddof=1)
    return {"index": name, "low": low, "high": high, "standardErrors": {"low": error[0], "high": error[1]}}


def drawn(rows, columns, low=4, high=40, digits=1):
    return np.round(RNG.uniform(low, high, (rows, columns)), digits).tolist()


def ladder(count, side, power):
    return [round(float(side * ((i + 0.5) / count) ** power), 3) for i in range(count)]


with_gaps = drawn(6, 5)
for i, j, mark in [(0, 0, "x"), (0, 4, ""), (2, 2, "X"), (3, 1, ""), (5, 0, ""), (5, 4, " x ")]:
    with_gaps[i][j] = mark
ties = [[12, 12, 12, 12, 30, 12], [12, 12, 25, 12, 12, 26], [12, 28, 12, 12, 31, 12], [12, 12, 12, 24, 12, 12]]
steps = [[[9, 9, 14, 21][(i * 7 + j * 5) % 4] for j in range(8)] for i in range(5)]
giant = [[18, 22, 25], [21, 11.5, 24], [19, 23, 20]]

BEDS = [
    bed("weights very unequal, places crowd into a corner", drawn(5, 6), ladder(6, 12, 4), ladder(5, 16, 4), 12, 16, True),
    bed("weights very unequal, and the driest cans have the least", sorted(drawn(6, 4)), ladder(4, 10, 3), ladder(6, 20, 3), 10, 20),
    bed("many ties at the boundary of the quarter", ties, ladder(6, 12, 1.7), ladder(4, 9, 1.3), 12, 9),
    bed("only three different catches in 40 cans", steps, ladder(8, 20, 1), ladder(5, 10, 1.5), 20, 10, True),
    bed("one can with nearly all the ground, in the middle and driest", giant, [0.02, 6, 11.98], [0.02, 8, 15.98], 12, 16),
    bed("one can with nearly all the ground, at the corner and wettest", [[31, 9], [8, 7]], [0.01, 0.02], [0.01, 0.03], 30, 40),
    bed("cans that were not read, with blank areas", with_gaps, ladder(5, 11, 1.4), ladder(6, 13, 0.8), 11, 13, True),
    bed("2 cans, of unequal ground", [[7.5, 12.25]], [1, 1.5], [3], 9, 5),
    bed("2 cans, the driest with a quarter of the ground", [[4], [10]], [2], [1, 3], 4, 8),
    bed("5 cans in one row", [[14, 9.5, 17, 8.25, 12]], [0.2, 1, 4, 9, 9.9], [1.1], 10, 2.3),
    bed("200 cans", drawn(20, 10, 2, 60, 3), ladder(10, 25, 1.2), ladder(20, 60, 0.9), 25, 60, True),
    bed("one wet can among even ones", [[10, 10.1, 10, 9.9], [10, 300, 10.2, 9.8]], ladder(4, 8, 2), [1, 2], 8, 9),
]
# cans of 4 or fewer have no low quarter of their own in sheets and functions
for one in BEDS:
    one["cans"] = sum(isinstance(x, (int, float)) for row in one["readings"] for x in row)

(HERE / "areas-held.json").write_text(json.dumps({
    "source": {
        "author": "The NumPy and SciPy communities", "year": "2025",
        "title": f"numpy {np.__version__} and scipy.stats.bootstrap {scipy.__version__}", "place": "made by areas-held.py",
    },
    "test": TEST, "level": 0.9, "beds": BEDS, "grids": [],
}, indent=1) + "\n")
