// @vitest-environment jsdom
import { beforeEach, expect, it } from "vitest";
import type { CheckedFile, CopyReport } from "../../src/share/copy-report";
import { comparedCodes } from "../../src/taskpane/share/kept-codes";

beforeEach(() => localStorage.clear());

const checked = (name: string, code: string): CheckedFile => ({
  name,
  report: { code, facts: { site: "Example Nursery", block: "7", date: "2026-11-25", kind: "audit" } } as CopyReport,
  problem: "",
});

it("a copy with another code is named with the first one, in a later session too", () => {
  expect(comparedCodes([checked("a.xlsx", "1111")])).toEqual([""]);
  expect(comparedCodes([checked("b.xlsx", "2222")])[0]).toMatch(
    /as a\.xlsx, whose code is 1111; b\.xlsx has the code 2222/,
  );
  expect(comparedCodes([checked("a again.xlsx", "1111")])).toEqual([""]);
});

it("what is kept and cannot be read counts for nothing", () => {
  localStorage.setItem("canfall-first-codes", "{");
  expect(comparedCodes([checked("a.xlsx", "1111")])).toEqual([""]);
  localStorage.setItem("canfall-first-codes", '[["x", 3], 4, ["y", {"name": "n", "code": "c"}]]');
  expect(comparedCodes([checked("b.xlsx", "2222")])).toEqual([""]);
});
