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
const TURN_MS = 10;
/** A busy machine takes a minute for one round of the steps. */
const PATIENCE_MS = 240_000;
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
  let [counted, last, quiet] = [0, start, 0];
  await work();
  // turns, not time: on a busy machine one turn may take as long as the events are gathered
  while (quiet * TURN_MS < silence) {
    await act(() => pause(TURN_MS));
    const loading = page?.place.querySelector("[role=progressbar]");
    quiet = counted === excel.requests.length && excel.unanswered === 0 && !loading ? quiet + 1 : 0;
    counted = excel.requests.length;
    if (quiet === 0) last = performance.now();
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

/** What each request asks for, in short. */
const asked = () =>
  excel.requests
    .map(({ ObjectPaths }) => [...new Set(Object.values(ObjectPaths).map(({ Name }) => Name))].join(" ").slice(0, 80))
    .join("\n");

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

const NURSERY = ["Demand", "Schedule", "Register"];

describe.each([
  ["audit", "Cans", STEPS.filter(({ title }) => !NURSERY.includes(title))],
  ["nursery", "Demand", STEPS.filter(({ title }) => NURSERY.includes(title))],
])("the pane over the example %s", (example, sheet, steps) => {
  it.each(LATENCIES)(
    "asks seldom to open, and at most 5 times after an act (%i ms each)",
    async (latency) => {
      await openInFake(excel.workbook, readFileSync(`templates/example-${example}.xlsx`));
      excel.latency = latency;
      const opening = await during(async () => {
        page = await screen(<Pane host={excelHost()} functions={[]} />);
      }, FIRST_MS);
      note(`${example}: opening`, latency, opening);
      expect(opening.requests).toBeGreaterThan(2);
      expect(opening.requests, `opening asks\n${asked()}`).toBeLessThanOrEqual(10);
      expect(JSON.stringify(excel.requests), "lifting a protection empties Excel's own Undo").not.toContain(
        "Unprotect",
      );
      for (const [row, { title }] of steps.entries()) {
        await during(() => page.step(title), OPENED_MS);
        let typing = await during(() => type(sheet, row + 8));
        // on a busy machine a step that just opened may still ask for itself
        if (typing.requests > 5) typing = await during(() => type(sheet, row + 8));
        note(`${example}: ${title}`, latency, typing);
        expect(typing.requests, title).toBeGreaterThan(0);
        expect(typing.requests, `${title} asks\n${asked()}`).toBeLessThanOrEqual(5);
      }
    },
    PATIENCE_MS,
  );
});
