import { beforeAll, describe, expect, it } from "vitest";
import type { Entries } from "../../src/workbook/form/build";
import { PROGRAM } from "../../src/workbook/nursery/program/program";
import { NURSERY } from "../../src/workbook/nursery/start/start";
import { START_TIMES } from "../../src/workbook/nursery/start-times/start-times";
import { type Calculated, calculated } from "../support/audits";
import { DEMAND_STUB } from "../support/demand-stub";
import { WRONG, WRONG_LINES } from "./program-cases";

const SHEETS = [NURSERY, DEMAND_STUB, PROGRAM, START_TIMES];

describe("what is typed wrong in a Program", () => {
  let found: Calculated[];
  beforeAll(async () => {
    const programs = await calculated(
      WRONG.map(([, entries]) => entries).map(({ Start_Times, ...entries }) => entries as Entries),
      SHEETS.slice(0, -1),
    );
    found = [...programs, ...(await calculated([...WRONG_LINES.map(([, entries]) => entries), {}], SHEETS))];
  });

  it.each(WRONG_LINES.map(([title, , said], index) => ({ title, said, index })))(
    "sees $title among the start times",
    ({ said, index }) => {
      expect(found[WRONG.length + index]!.at("Start times!I6")).toBe(said);
    },
  );

  it.each(WRONG.map(([title, , place, said], index) => ({ title, place, said, index })))(
    "says what to do about $title",
    ({ place, said, index }) => {
      expect(found[index]!.at(`Program!${place}`)).toBe(said);
    },
  );

  it("never shows an error value", () => {
    const errors = found.flatMap(({ at, places }, index) =>
      places
        .filter((place) => /^(#|Err:)/.test(String(at(place))))
        .map((place) => [WRONG[index]?.[0], place, at(place)]),
    );
    expect(errors).toEqual([]);
  });

  it("says on a blank form only what it needs", () => {
    const { at, places } = found.at(-1)!;
    const said = new Set(
      places
        .filter((place) => /^(Program|Start times)!/.test(place) && !/![K-X]\d+$/.test(place))
        .map((place) => String(at(place))),
    );
    expect([...said].filter((text) => text && !/needs|^no |No start times yet/.test(text))).toEqual([]);
  });
});
