import { describe, expect, it } from "vitest";
import { cellAt, overlap, parseArea, parseBox, reference, spill } from "../../src/cells/box";

const at = (address: string, sheet = "Example") => ({ sheet, address });

describe("an address", () => {
  it("is read with its sheet, with and without quotes and dollar signs", () => {
    expect(parseArea("Example!$F$2", "Other")).toEqual(at("F2"));
    expect(parseArea("'Bob''s bed 7'!b2:b26", "Other")).toEqual(at("B2:B26", "Bob's bed 7"));
    expect(parseArea(" F2 ", "Example")).toEqual(at("F2"));
  });

  it("is null for anything else and outside the sheet", () => {
    for (const text of ["", "twelve", "F0", "XFE1", "A1048577", "!A1", "A1:B", "ABCD1"]) {
      expect(parseArea(text, "Example"), text).toBeNull();
    }
    expect(parseBox("XFD1048576")).toEqual({ row: 1048576, column: 16384, rows: 1, columns: 1 });
  });

  it("names its sheet in a formula only where the formula is on another", () => {
    expect(reference(at("B2:B26"), "Example")).toBe("B2:B26");
    expect(reference(at("B2:B26"), "Other")).toBe("Example!B2:B26");
    expect(reference(at("F2", "Bob's bed 7"), "Other")).toBe("'Bob''s bed 7'!F2");
    expect(reference(at("F2", "B7"), "Other")).toBe("'B7'!F2");
  });

  it("counts cells across column Z", () => {
    expect(cellAt(at("Y3:AB9"), 2, 3)).toEqual(at("AB5"));
    expect(spill(at("Z1"), 2, 3)).toEqual(at("Z1:AB2"));
    expect(spill(at("XFD1"), 1, 2)).toBeNull();
  });

  it("overlaps only what shares a cell on the same sheet", () => {
    expect(overlap(at("B2:B26"), at("B26:D30"))).toBe(true);
    expect(overlap(at("B2:B26"), at("C2:C26"))).toBe(false);
    expect(overlap(at("B2:B26"), at("B2", "Other"))).toBe(false);
  });
});
