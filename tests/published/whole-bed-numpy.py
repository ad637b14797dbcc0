"""A bed given its cans, under one linear normal model, computed by numpy in a way of its own.

Run with numpy:  python3 tests/published/whole-bed-numpy.py
Writes whole-bed-numpy.json beside itself.

A cone of water about each head. What is unknown - scale, output and throw of each head, drift, uneven throw downwind, hats
of the profile - enters by derivatives, here differences over small steps of the overlap itself. The mean and the standard
deviation of the bed given the cans are those of the joint normal distribution of cans and cells, by numpy.linalg.
"""

import json
import pathlib

import numpy as np

HERE = pathlib.Path(__file__).parent
WIDTH, LENGTH, THROW, COLUMNS, ROWS = 6.0, 8.0, 4.4, 24, 32
HEADS = np.array([(x, y) for y in (0.0, 4.0, 8.0) for x in (0.0, 6.0)])
ACROSS, ALONG = [0.3, 2.1, 3.9, 5.7], [0.3, 2.8, 5.2, 7.7]
SETTING = {"output": 0.06, "profile": 0.2, "field": 0.03, "reading": 0.055}
CATCHES = np.array([[9, 12, 11, 8], [12, 10.5, 10, 11], [11.5, 10, 11, 12.5], [8.5, 12, 12.5, 9]])
SHOWN = [25, 9, 111, 301, 396, 500, 600, 742]  # cells whose distance from a head is not that of its edge, where the slope jumps
STEP = 1e-5


def grid(xs, ys):
    return np.array([(x, y) for y in ys for x in xs])


def cone(v):
    return np.where(v < 1, 3 / np.pi * (1 - v), 0.0)


def overlap(places, output=None, throw=None, drift=(0, 0, 0, 0), tilt=(0, 0, 0, 0), bump=None):
    """Rate at places; drift: growing and equal; tilt: whole at the throw and at 0.3 of it; bump: added to the profile."""
    total = np.zeros(len(places))
    for k, head in enumerate(HEADS):
        reach = THROW * (1 if throw is None else throw[k])
        off = (places - head) / reach
        still = np.linalg.norm(off, axis=1)
        off = off - np.outer(still, drift[:2]) - np.array(drift[2:])
        v = np.linalg.norm(off, axis=1)
        cos, sin = off[:, 0] / v, off[:, 1] / v
        lean = (tilt[0] * cos + tilt[1] * sin) * np.minimum(v, 1) + (tilt[2] * cos + tilt[3] * sin) * np.minimum(v / 0.3, 1)
        rate = cone(v) * (1 + lean) + (0 if bump is None else bump(v))
        total += (1 if output is None else output[k]) * rate / reach**2
    return total


def difference(places, name, size, sd):
    columns = []
    for k in range(size):
        step = np.zeros(size)
        step[k] = STEP
        up, down = (overlap(places, **{name: (1 if name in ("output", "throw") else 0) + s * step}) for s in (1, -1))
        columns.append(sd[k] * (up - down) / (2 * STEP))
    return np.array(columns).T


def hats(places):
    nodes = 0.09 * np.arange(14)
    columns = np.array([overlap(places, bump=lambda v, j=j: np.interp(v, 0.09 * np.arange(15), np.eye(15)[j])) for j in range(14)])
    columns = (columns - overlap(places)).T
    sd = np.maximum(cone(nodes), 0.12) * (1 + np.exp(-((nodes / 0.2) ** 2)))
    alike = np.exp(-(((nodes[:, None] - nodes) / 0.2) ** 2) / 2) + 1e-6 * np.eye(14)
    return columns @ (sd[:, None] * np.linalg.cholesky(alike))


cans = grid(ACROSS, ALONG)
middles = lambda size, count: (np.arange(count) + 0.5) * size / count
places = np.vstack([cans, grid(middles(WIDTH, COLUMNS), middles(LENGTH, ROWS))])
n = len(cans)
scale = 1 / overlap(cans).mean()
base = scale * overlap(places)
level = np.maximum(base, 0.25)
J = np.hstack([
    0.6 * base[:, None],
    scale * difference(places, "drift", 4, [0.1, 0.1, 0.09, 0.09]),
    scale * difference(places, "tilt", 4, [0.09] * 4),
    scale * difference(places, "throw", 6, [0.03] * 6),
    SETTING["output"] * scale * difference(places, "output", 6, [1] * 6),
    SETTING["profile"] * scale * hats(places),
])
apart = np.linalg.norm(places[:, None] - places, axis=2)
smooth = SETTING["field"] ** 2 * np.outer(level, level) * np.exp(-((apart / (0.45 * THROW)) ** 2) / 2)
joint = J @ J.T + smooth
V = joint[:n, :n] + np.diag((SETTING["reading"] * level[:n]) ** 2)
errors = CATCHES.ravel() / CATCHES.mean() - base[:n]
gain = joint[n:, :n] @ np.linalg.inv(V)
mean = base[n:] + gain @ errors
spread = np.sqrt(np.diag(joint[n:, n:] - gain @ joint[:n, n:]))
likelihood = -(errors @ np.linalg.solve(V, errors) + np.linalg.slogdet(V)[1]) / 2
matrix = V[:4, :4].round(6)

json.dump({
    "source": {
        "author": "The NumPy community",
        "year": "2025",
        "title": f"numpy {np.__version__}, linalg",
        "place": "made by whole-bed-numpy.py",
    },
    "bed": {
        "width": WIDTH, "length": LENGTH, "throw": THROW, "across": ACROSS, "along": ALONG,
        "heads": HEADS.tolist(), "catches": CATCHES.tolist(), "setting": SETTING,
    },
    "logLikelihood": likelihood,
    "cells": [{"cell": i, "mean": mean[i], "sd": spread[i]} for i in SHOWN],
    "matrix": matrix.tolist(),
    "factor": np.linalg.cholesky(matrix).tolist(),
    "solution": np.linalg.solve(matrix, [1, 2, 3, 4]).tolist(),
}, open(HERE / "whole-bed-numpy.json", "w"), indent=1)
