import { beforeAll, describe, expect, it } from "vitest";
import { cell, fakeCustomFunctions } from "../support/custom-functions";
import { CALLS, type Call, exchanged } from "./calls";

/** What an argument must be, for each name; `fits` lists further values that it takes. */
const RULES: Record<string, { rule: string; refused: unknown[]; fits: unknown[] }> = {
  minutes: { rule: "be more than 0 min", refused: [], fits: [0.5] },
  mouth: { rule: 'be a diameter in mm, or "mm" for readings in mm', refused: ["cm", "x"], fits: ["mm", " MM ", 95.5] },
  depth: { rule: "be more than 0 mm", refused: [], fits: [0.1] },
  area: { rule: "be more than 0 m²", refused: [], fits: [1] },
  days: { rule: "be more than 0 and at most 366", refused: [367], fits: [366, 0.5] },
  flow: { rule: "be more than 0 L/h", refused: [], fits: [1] },
  spacing: { rule: "be more than 0 m", refused: [], fits: [1] },
  row_spacing: { rule: "be more than 0 m", refused: [], fits: [1] },
  width: { rule: "be more than 0 m", refused: [], fits: [2, 9.5] },
  length: { rule: "be more than 0 m", refused: [], fits: [2, 9.5] },
  radius: { rule: "be more than 0 m", refused: [], fits: [2, 9.5] },
};

const NEVER_POSITIVE = [0, -1, Number.NaN, Number.NEGATIVE_INFINITY, "", null, undefined, "20", true, [[20]], {}];

function shown(value: unknown): string {
  if (value === null || value === undefined || value === "") return "a blank cell";
  if (typeof value === "string") return `"${value}"`;
  if (Array.isArray(value)) return "a list";
  if (value === true) return "TRUE";
  return typeof value === "number" ? String(value) : "a linked value";
}

function arguments_(names: string[]): [string, string, Call, number][] {
  return CALLS.flatMap((call) =>
    call.names.flatMap((name, at): [string, string, Call, number][] =>
      names.includes(name) ? [[call.id, name, call, at]] : [],
    ),
  );
}

beforeAll(() => void fakeCustomFunctions());

/** A much larger bed about the same cans has no interval: tests/functions/bed-interval.test.ts looks at its sides. */
const SIZED = arguments_(Object.keys(RULES)).filter(
  ([id, name]) => id !== "BED.INTERVAL" || !["width", "length"].includes(name),
);

describe.each(SIZED)("%s, %s", (_, name, call, at) => {
  const { rule, refused, fits } = RULES[name]!;

  it("must be there and be a number in its range", () => {
    for (const value of [...NEVER_POSITIVE, ...refused]) {
      const message = `${name} must ${rule}, got ${shown(value)}`;
      expect(cell(() => exchanged(call, at, value))).toEqual({ error: "#VALUE!", message });
    }
  });

  it("may be a data type, and no error", () => {
    for (const value of fits) expect(cell(() => exchanged(call, at, value))).not.toHaveProperty("error");
    const held = { type: "Double", basicValue: 30 };
    expect(exchanged(call, at, held)).toEqual(exchanged(call, at, 30));
    const error = { type: "Error", basicValue: "#REF!" };
    expect(cell(() => exchanged(call, at, error))).toEqual({
      error: "#VALUE!",
      message: `${name} must ${rule}, got #REF!`,
    });
  });
});

/** Arguments with rules of their own. */
const OWN: Record<string, { rule: string; refused: unknown[]; fits: unknown[]; functions?: string[] }> = {
  price: { rule: "be 0 or more", refused: [-1, Number.NaN, "2", true, null, ""], fits: [0, 3.5] },
  basis: {
    rule: 'be "can", "quarter" or a share of the cans from 0.5 to 1',
    refused: [0, 0.49, 1.01, -1, Number.NaN, true, [[1]], {}],
    fits: ["can", "CAN ", "quarter", 0.5, 1, "", null, undefined],
  },
  in_bed_share: { rule: "be more than 0 and at most 1", refused: [0, -1, 1.01, "1", true], fits: [1, 0.5, "", null] },
  arrangement: {
    rule: 'be "border", "inset", "centre" or "staggered"',
    refused: [0, 1, true, null, "", "edge", [[1]], {}],
    fits: ["border", " BORDER "],
  },
  arcs: {
    rule: 'be "full", "matched" or "unmatched"',
    refused: [0, 1, true, "half", [[1]], {}],
    fits: ["full", "Matched ", "unmatched", "", null, undefined],
  },
  "[cell]": { rule: "be more than 0 m", refused: [0, -1, "1", true, Number.NaN], fits: [0.25, 1, "", null, undefined] },
  "[row_spacing]": { rule: "be more than 0 m", refused: [0, -1, "1", true, {}], fits: [3, "", null, undefined] },
  level: { rule: "be from 0.5 to 0.99", refused: [0.49, 1, "0.9", true, Number.NaN], fits: [0.5, 0.99, "", null] },
};

describe.each(arguments_(Object.keys(OWN)))("%s, %s", (_, name, call, at) => {
  const { rule, refused, fits } = OWN[name]!;

  it("takes what fits and refuses the rest", () => {
    for (const value of fits) expect(cell(() => exchanged(call, at, value))).not.toHaveProperty("error");
    for (const value of refused) {
      const message = `${name.replace(/[[\]]/g, "")} must ${rule}, got ${shown(value)}`;
      expect(cell(() => exchanged(call, at, value))).toEqual({ error: "#VALUE!", message });
    }
  });
});

describe("share", () => {
  const share = (id: string, value: unknown) => cell(() => exchanged(CALLS.find((call) => call.id === id)!, 1, value));

  it("lies from 0.5 to 1 for SC.SHARE", () => {
    for (const value of [0, 0.49, 1.01, Number.NaN, "0.9", null, true]) {
      const message = `share must be from 0.5 to 1, got ${shown(value)}`;
      expect(share("SC.SHARE", value)).toEqual({ error: "#VALUE!", message });
    }
  });

  it("is above 0 and up to 0.5 for SC.PATCH", () => {
    for (const value of [0, -0.1, 0.51, Number.NaN, "0.1", null, true]) {
      const message = `share must be more than 0 and at most 0.5, got ${shown(value)}`;
      expect(share("SC.PATCH", value)).toEqual({ error: "#VALUE!", message });
    }
  });
});
