// @vitest-environment jsdom
import { readFileSync } from "node:fs";
import { act } from "react";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { excelHost } from "../../src/hosts/excel/excel";
import { pause } from "../../src/hosts/pause";
import { Pane } from "../../src/taskpane/pane";
import { STEPS } from "../../src/taskpane/steps";
import { FakeExcel } from "../support/fake-excel";
import { rectangle } from "../support/fake-excel-address";
import { openInFake } from "../support/fake-excel-book";
import { screen } from "../support/screen";

/** `npm run bench:excel` also measures with requests that take as long as they do between a pane and Excel. */
const LATENCIES = process.env.BENCH_EXCEL ? [0, 30, 100] : [0];
/** Longer than events are gathered. */
const SILENCE_MS = 200;
/** Longer than a step computes between what it asks for when it opens. */
const OPENED_MS = 400;
/** Longer than the first step takes to load. */
const FIRST_MS = 1500;

let excel: FakeExcel;
let page: Awaited<ReturnType<typeof screen>>;
const table: Record<string, Record<string, number>> = {};

/** The requests that an act leads to, and how long they take [ms]. */
async function during(work: () => unknown, silence = SILENCE_MS): Promise<{ requests: number; time: number }> {
  excel.requests.length = 0;
  const start = performance.now();
  let [counted, last] = [0, start];
  await work();
  while (performance.now() - last < silence) {
    await act(() => pause(10));
    const loading = page?.place.querySelector("[role=progressbar]");
    if (counted === excel.requests.length && excel.unanswered === 0 && !loading) continue;
    counted = excel.requests.length;
    last = performance.now();
  }
  return { requests: counted, time: Math.round(last - start) };
}

/** A person types a number under the one before. */
function type(sheetName: string, row: number): void {
  const sheet = excel.workbook.sheet(sheetName)!;
  sheet.set(row, 7, 20 + row);
  excel.workbook.selection = { sheet, area: rectangle(`H${row + 2}`) };
  excel.tell("DataChanged");
  excel.tell("Selection");
  excel.tell("Calculated");
}

function note(line: string, latency: number, { requests, time }: { requests: number; time: number }): void {
  table[line] = { ...table[line], requests, [`ms at ${latency}`]: time };
}

beforeAll(() => {
  excel = new FakeExcel();
});
afterEach(() => page.close());
afterAll(() => {
  if (process.env.BENCH_EXCEL) console.table(table);
});

/** The answer of an audit writes its verdict into the workbook once. */
const NURSERY = ["Demand", "Schedule", "Register"];

describe.each([
  ["audit", "Cans", 24, STEPS.filter(({ title }) => !NURSERY.includes(title))],
  ["nursery", "Demand", 10, STEPS.filter(({ title }) => NURSERY.includes(title))],
])("the pane over the example %s", (example, sheet, most, steps) => {
  it.each(LATENCIES)("asks seldom to open, and at most 5 times after an act (%i ms each)", async (latency) => {
    await openInFake(excel.workbook, readFileSync(`templates/example-${example}.xlsx`));
    excel.latency = latency;
    const opening = await during(async () => {
      page = await screen(<Pane host={excelHost()} functions={[]} />);
    }, FIRST_MS);
    note(`${example}: opening`, latency, opening);
    expect(opening.requests).toBeGreaterThan(2);
    expect(opening.requests, "opening").toBeLessThanOrEqual(most);
    for (const [row, { title }] of steps.entries()) {
      await during(() => page.step(title), OPENED_MS);
      let typing = await during(() => type(sheet, row + 8));
      // on a busy machine a step that just opened may still ask for itself
      if (typing.requests > 5) typing = await during(() => type(sheet, row + 8));
      note(`${example}: ${title}`, latency, typing);
      expect(typing.requests, title).toBeGreaterThan(0);
      expect(typing.requests, title).toBeLessThanOrEqual(5);
    }
  });
});
