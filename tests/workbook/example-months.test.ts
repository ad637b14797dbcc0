import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import type { Area } from "../../src/cells/area";
import { placesOf } from "../../src/cells/places";
import { twelveMonths } from "../../src/core/program/twelve-months";
import type { Snapshot } from "../../src/hosts/snapshot";
import { PROGRAM_SHEET } from "../../src/taskpane/night/program-sheet";
import { MONTHS } from "../../src/workbook/nursery/months";
import { programOf } from "../../src/workbook/nursery/program/entries";
import { openBook } from "../../src/xlsx/parts/workbook-file";

/** Pulses placed a month: an eighth of what the pane does; the months that fit are found at once. */
const EFFORT = 50_000;
const text = (path: string) => readFileSync(new URL(`../../${path}`, import.meta.url));
const book = openBook(text("templates/example-nursery.xlsx"));

const areaOf = (name: string): Area | null => {
  const found = /^'?([^'!]+)'?!(.+)$/.exec(book.names.get(name) ?? "");
  return found && { sheet: found[1]!, address: found[2]!.replaceAll("$", "") };
};
const cellsOf = ({ sheet, address }: Area) => {
  const { cells } = book.sheets.find(({ name }) => name === sheet)!;
  const places = placesOf(address);
  const rowOf = (place: string) => /\d+/.exec(place)![0];
  return [...new Set(places.map(rowOf))].map((row) =>
    places.filter((place) => rowOf(place) === row).map((place) => cells.get(place)?.value ?? null),
  );
};
/** What the pane would have read of the file. */
const snapshot = {
  named: (name: string) => {
    const area = areaOf(name);
    return area && { area, cells: cellsOf(area) };
  },
} as unknown as Snapshot;

it("the README names every month of the example nursery whose night does not fit", () => {
  const sheet = PROGRAM_SHEET.read(snapshot)!;
  const programs = MONTHS.map((_, index) => programOf(sheet, index + 1).program!);
  const short = [...twelveMonths(programs, EFFORT)].flatMap(({ month, night }) => {
    expect(night, MONTHS[month - 1]).toBeDefined();
    return night!.fits ? [] : [MONTHS[month - 1]];
  });
  const [, said] =
    /In the example these months do not fit: ([^.]*)\./.exec(text("README.md").toString().replace(/\s+/g, " ")) ?? [];
  expect(said?.split(", ")).toEqual(short);
}, 120_000);
