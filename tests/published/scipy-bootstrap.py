"""Reference intervals from scipy.stats.bootstrap, and normal values from scipy.stats.norm.

Run with Debian's python3-scipy:  /usr/bin/python3 tests/published/scipy-bootstrap.py
Writes scipy-bootstrap.json and scipy-normal.json beside itself.

The standard error of an end with 2,000 resamples is the standard deviation of that end over 200 runs of
scipy.stats.bootstrap with 2,000 resamples and different seeds; that of z0 is had in the same way.
"""

import json
import pathlib

import numpy as np
import scipy
from scipy.special import ndtri
from scipy.stats import bootstrap, norm
from scipy.stats._resampling import _bca_interval

LEVEL = 0.9
HERE = pathlib.Path(__file__).parent

BEDS = {
    "16 cups": [53, 56, 61, 66, 47, 49, 57, 61, 42, 43, 50, 53, 40, 41, 48, 49],
    "24 cans, one corner dry": [
        0, 3.1, 7.4, 9.8, 2.7, 8.2, 11.3, 12.9, 6.9, 10.4, 13.1, 14.8,
        8.8, 12.2, 14.1, 15.7, 9.3, 11.9, 15.2, 16.4, 8.1, 12.6, 13.7, 14.9,
    ],
    "40 cans, one far above the rest": [
        21, 24, 19, 22, 25, 20, 23, 26, 18, 22, 24, 21, 20, 27, 23, 19, 22, 25, 21, 24,
        17, 23, 20, 26, 22, 19, 24, 21, 25, 23, 20, 22, 18, 24, 26, 21, 23, 19, 22, 88,
    ],
}


def mean(x, axis=-1):
    return np.mean(x, axis=axis)


def christiansen(x, axis=-1):
    m = np.mean(x, axis=axis, keepdims=True)
    return 100 * (1 - np.mean(np.abs(x - m), axis=axis) / np.squeeze(m, axis=axis))


def distribution(x, axis=-1):
    n = x.shape[axis]
    k = max(1, int(np.floor(n / 4 + 0.5)))
    low = np.take(np.sort(x, axis=axis), np.arange(k), axis=axis)
    return 100 * np.mean(low, axis=axis) / np.mean(x, axis=axis)


INDICES = {"MEAN": mean, "CU.CHRISTIANSEN": christiansen, "DU.QUARTER": distribution}


def run(x, index, resamples, seed):
    found = bootstrap(
        (x,), index, n_resamples=resamples, confidence_level=LEVEL, method="BCa",
        vectorized=True, axis=-1, batch=20_000, random_state=seed,
    )
    replicates = found.bootstrap_distribution
    value = index(x)
    same = np.abs(replicates - value) <= 1e-12 * abs(value)
    below = np.mean((replicates < value) & ~same) + np.mean(same) / 2
    interval = found.confidence_interval
    return interval.low, interval.high, ndtri(below), replicates


def reference(readings, index):
    x = np.sort(np.array(readings, dtype=float))
    low, high, bias, replicates = run(x, index, 200_000, 1)
    acceleration = _bca_interval((x,), index, -1, 0.05, replicates, 20_000)[2]
    short = np.array([run(x, index, 2_000, seed)[:3] for seed in range(2, 202)])
    error = short.std(axis=0, ddof=1)
    return {
        "low": low, "high": high, "z0": bias, "acceleration": float(np.squeeze(acceleration)),
        "standardErrors": {"low": error[0], "high": error[1], "z0": error[2]},
    }


def write(name, content):
    (HERE / name).write_text(json.dumps(content, indent=1) + "\n")


write("scipy-bootstrap.json", {
    "source": {
        "author": "The SciPy community", "year": "2023",
        "title": f"scipy.stats.bootstrap, method BCa, version {scipy.__version__}, 200,000 resamples",
        "place": "Debian package python3-scipy; made by scipy-bootstrap.py",
    },
    "level": LEVEL,
    "beds": [
        {"bed": name, "readings": readings, "index": index, **reference(readings, INDICES[index])}
        for name, readings in BEDS.items() for index in INDICES
    ],
})

write("scipy-normal.json", {
    "source": {
        "author": "The SciPy community", "year": "2023",
        "title": f"scipy.stats.norm, version {scipy.__version__}",
        "place": "Debian package python3-scipy; made by scipy-bootstrap.py",
    },
    "cases": [
        {"what": f"cdf at {z}", "function": "normalCdf", "arguments": [z], "expected": f"{norm.cdf(z):.14f}"}
        for z in [-8, -3, -1.5, 0.3, 1, 1.96, 4, 7.2]
    ] + [
        {"what": f"quantile of {p}", "function": "normalQuantile", "arguments": [p], "expected": f"{norm.ppf(p):.13g}"}
        for p in [1e-20, 1e-6, 0.01, 0.05, 0.3, 0.9, 0.975, 0.999999]
    ],
})
