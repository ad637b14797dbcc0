"""Median milliseconds of numpy's vectorised sum over heads, of the rates alone and with CU, DU and the driest cell.

Run: /usr/bin/python3 layout-numpy.py WIDTH LENGTH SPACING THROW FLOW CELL ROUNDS; heads on the border, triangular profile
"""

import sys
import time

import numpy as np

width, length, spacing, reach, flow, cell = map(float, sys.argv[1:7])


def places(size):
    gaps = max(1, int(np.ceil(size / (1.05 * spacing) - 1e-9)))
    return np.linspace(0, size, gaps + 1)


def summed():
    columns, rows = round(width / cell), round(length / cell)
    x = (np.arange(columns) + 0.5) * width / columns
    y = ((np.arange(rows) + 0.5) * length / rows)[:, None]
    peak = 3 * flow / (np.pi * reach**2)
    total = np.zeros((rows, columns))
    for v in places(length):
        for u in places(width):
            r = np.sqrt((x - u) ** 2 + (y - v) ** 2)
            total += peak * np.maximum(0, 1 - r / reach)
    return total


def judged():
    total = summed().ravel()
    mean = total.mean()
    quarter = round(total.size / 4)
    lowest = np.partition(total, quarter - 1)[:quarter].mean()
    return mean, 100 * (1 - np.abs(total - mean).mean() / mean), 100 * lowest / mean, mean / total.min()


def median(work):
    times = []
    for _ in range(int(sys.argv[7])):
        start = time.perf_counter()
        work()
        times.append(1000 * (time.perf_counter() - start))
    return sorted(times)[len(times) // 2]


print(median(summed), median(judged), judged()[0])
