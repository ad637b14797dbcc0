import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { shareCopy } from "../../src/share/copy/share-copy";
import { BOOK_KINDS } from "./forged/book-kinds";
import { CELL_KINDS } from "./forged/cell-kinds";
import { LOOK_KINDS } from "./forged/kinds";
import { found } from "./forged/outcome";
import { SHEET_KINDS } from "./forged/sheet-kinds";

/** `npm run proof:forged` tries all of them, and those that openpyxl makes. */
const ALL = [...LOOK_KINDS, ...BOOK_KINDS, ...CELL_KINDS, ...SHEET_KINDS];
const A_TENTH = ALL.filter((_, index) => index % 10 === 4);

describe("forged copies, a tenth of the kinds", () => {
  let copy: Uint8Array;
  beforeAll(async () => {
    copy = await shareCopy(new Uint8Array(readFileSync("templates/example-audit.xlsx")), new Date(2026, 10, 25));
  });

  it("are of at least 150 kinds in all", () => {
    expect(ALL.length).toBeGreaterThanOrEqual(150);
  });

  it.each(A_TENTH.map((forgery) => [forgery.kind, forgery] as const))("%s: is found", async (_, forgery) => {
    const { found: isFound, said } = await found(copy, forgery);
    expect({ isFound, said }).toMatchObject({ isFound: true });
    expect(said).not.toBe("");
  });
});
