import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { fifteenDigits, inputDigest } from "../../src/share/copy/digest";

interface FromPython {
  numbers: [number, string][];
  rows: [string, number, number, string | number | boolean][];
  sha256: string;
}

/** Written by digest.py, with Python's own number form and hashlib. */
const PYTHON = JSON.parse(readFileSync(new URL("digest.json", import.meta.url), "utf8")) as FromPython;

describe("the digest of what was typed", () => {
  it("is what Python's hashlib gives for the same rows", async () => {
    const inputs = PYTHON.rows.map(([name, row, column, value]) => ({ name, row, column, value }));
    expect(await inputDigest(inputs)).toBe(PYTHON.sha256);
  });

  it("writes numbers as Python's %.15g", () => {
    expect(PYTHON.numbers.map(([number]) => fifteenDigits(number))).toEqual(PYTHON.numbers.map(([, text]) => text));
  });
});
