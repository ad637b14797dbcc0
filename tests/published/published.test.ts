import { afterAll, describe, expect, it } from "vitest";
import { resultOf } from "../support/calls";
import { caseFiles } from "../support/case-files";
import { compare } from "../support/published";

const table: { source: string; cases: number; "largest miss, in tolerances": string }[] = [];

describe.each(caseFiles())("$name", ({ name, source, cases }) => {
  it("names its source", () => {
    expect(source).toEqual({
      author: expect.stringMatching(/./),
      year: expect.any(String),
      title: expect.stringMatching(/./),
      place: expect.any(String),
    });
  });

  const misses: number[] = [];

  it.each(cases)("$what is $expected", (expected) => {
    const { agrees, misses: miss, message } = compare(resultOf(expected), expected);
    misses.push(miss);
    expect(agrees, message).toBe(true);
  });

  afterAll(() => {
    table.push({
      source: `${name.replace(".json", "")}: ${source.author}`,
      cases: misses.length,
      "largest miss, in tolerances": Math.max(...misses).toFixed(2),
    });
  });
});

afterAll(() => console.table(table));
