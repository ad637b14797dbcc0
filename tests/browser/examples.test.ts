import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { unzipSync } from "fflate";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { boxOf, cellAt } from "../../src/cells/box";
import type { Cell } from "../../src/cells/cell";
import type { Results } from "../../src/workbook/form/build";
import { XlsxFile } from "../../src/xlsx/desk-file/desk-file";
import { formulaResults } from "../support/formula-results";
import { plantedFile } from "../support/planted";
import { bookBytes, type Desk, type Desks, desks } from "./desk-page";
import { DIST } from "./dist";

let all: Desks;
let desk: Desk;
beforeAll(async () => {
  all = await desks();
  desk = await all.open();
}, 300_000);
afterAll(() => all.close());

const template = (name: string) =>
  new Uint8Array(readFileSync(fileURLToPath(new URL(`../../templates/${name}`, import.meta.url))));

/** What the desk shows in every cell of the open workbook, by `Sheet!A1`. */
async function shown(): Promise<Map<string, Cell>> {
  const sheets = await desk.page.evaluate(async () => {
    const { host } = window.desk;
    await host.settled();
    const found = [];
    for (const sheet of await host.sheets()) {
      const area = await host.used(sheet);
      if (area) found.push({ area, cells: await host.read(area) });
    }
    return found;
  });
  return new Map(
    sheets.flatMap(({ area, cells }) => {
      const { rows, columns } = boxOf(area);
      return Array.from({ length: rows * columns }, (_, index): [string, Cell] => {
        const [row, column] = [Math.floor(index / columns), index % columns];
        const { sheet, address } = cellAt(area, row, column);
        return [`${sheet}!${address}`, cells[row]![column] as Cell];
      });
    }),
  );
}

function same(calculated: Cell | undefined, expected: string | number | boolean): boolean {
  if (typeof expected === "number" && typeof calculated === "number") {
    return Math.abs(calculated - expected) <= 1e-9 * Math.max(1e-3, Math.abs(expected));
  }
  return (calculated ?? "") === expected;
}

const differing = (found: Map<string, Cell>, expected: Results) =>
  [...expected]
    .filter(([place, value]) => !same(found.get(place), value))
    .map(([place, value]) => `${place}: ${JSON.stringify(found.get(place))}, LibreOffice ${JSON.stringify(value)}`);

describe.each(["example-audit.xlsx", "block-audit.xlsx", "example-nursery.xlsx", "nursery-plan.xlsx"])("%s", (name) => {
  test("shows at the desk what LibreOffice calculates, whatever values the file kept", async () => {
    const file = template(name);
    const expected = formulaResults(file);
    expect(expected.size).toBeGreaterThan(500);
    await desk.page.evaluate(
      async ([bytes, saved]) => {
        window.confirm = () => true;
        await window.desk.host.openBook(
          Uint8Array.from(atob(bytes!), (sign) => sign.charCodeAt(0)),
          saved!,
        );
      },
      [Buffer.from(plantedFile(file)).toString("base64"), name],
    );
    expect(differing(await shown(), expected)).toEqual([]);
  }, 180_000);
});

describe("the example that the page opens with", () => {
  let page: Page;
  beforeAll(async () => {
    page = (await all.anew("?example=audit")).page;
  });

  test("is there before the reader of files has been fetched", async () => {
    const scripts = await page.evaluate(() =>
      performance.getEntriesByType("resource").flatMap(({ name }) => /[^/]+\.js$/.exec(name) ?? []),
    );
    const large = scripts.filter((name) => statSync(join(DIST, "desk", name)).size > 100_000);
    expect(large).toEqual(["desk.js"]);
  });

  test("is saved with what was typed, and with all else that its file holds", async () => {
    await page.evaluate(() => window.desk.write("Cans", "G6", 41));
    const [was, now] = [template("example-audit.xlsx"), await bookBytes(page)];
    expect(Object.keys(unzipSync(now)).sort()).toEqual(Object.keys(unzipSync(was)).sort());
    const cellsOf = async (file: Uint8Array) => {
      const { sheets } = (await XlsxFile.open(file)).book();
      return new Map(
        sheets.flatMap(({ name, cells }) => cells.map((one) => [`${name} ${one.row} ${one.column}`, one])),
      );
    };
    const [before, after] = [await cellsOf(was), await cellsOf(now)];
    expect(after.size).toBe(before.size);
    const changed = [...after].flatMap(([place, { input }]) =>
      before.get(place)?.input === input ? [] : [[place, input]],
    );
    expect(changed).toEqual([["Cans 5 6", 41]]);
  });

  test("takes in the sheets of another file", async () => {
    page = (await all.anew("?example=audit")).page;
    const sheets = await page.evaluate(
      async (letters) => {
        await window.desk.host.insertSheets(Uint8Array.from(atob(letters), (sign) => sign.charCodeAt(0)));
        return window.desk.host.sheets();
      },
      Buffer.from(template("nursery-plan.xlsx")).toString("base64"),
    );
    expect(sheets.slice(0, 2)).toEqual(["Start", "Block"]);
    expect(sheets.slice(14, 16)).toEqual(["Nursery", "Demand"]);
  });
});
