"""Prints tests/share/digest.json: numbers as %.15g writes them, and a SHA-256 over the written form of inputs.

    python3 tests/share/digest.py > tests/share/digest.json
"""
import hashlib
import json
import random
import re

random.seed(1)
NUMBERS = [0, 1, 85, 3.5, 0.1 + 0.2, 0.0001, 0.00001, 123456789012345.0, 1e15, 2.5e-7, -12.25, 46351.27083333333]
NUMBERS += [random.random() * 10 ** random.randint(-8, 12) for _ in range(200)]
ROWS = [
    ["Site_Name", 1, 1, "Baumschule Grün\tNord\r\n7"],
    ["Cans_Readings", 1, 1, 52.3],
    ["Cans_Readings", 1, 2, "x"],
    ["Cans_Readings", 2, 1, 0],
    ["Test_Date", 1, 1, 46351],
    ["Flag", 1, 1, True],
]


def form(v):
    if isinstance(v, bool):
        return "TRUE" if v else "FALSE"
    return '"%s"' % re.sub("[\t\r\n]+", " ", v) if isinstance(v, str) else "%.15g" % v


lines = ["%s\t%d\t%d\t%s\n" % (name, row, column, form(value)) for name, row, column, value in ROWS]
print(
    json.dumps(
        {
            "numbers": [[n, "%.15g" % n] for n in NUMBERS],
            "rows": ROWS,
            "sha256": hashlib.sha256("".join(lines).encode("utf-8")).hexdigest(),
        }
    )
)
