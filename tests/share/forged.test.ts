import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { shareCopy } from "../../src/share/copy/share-copy";
import { BOOK_KINDS } from "./forged/book-kinds";
import { LOOK_KINDS } from "./forged/kinds";
import { found } from "./forged/outcome";

/** `npm run proof:forged` tries all of them, and those that openpyxl makes. */
const A_TENTH = [
  ...LOOK_KINDS.filter((_, index) => index % 11 === 5),
  ...BOOK_KINDS.filter((_, index) => index % 9 === 4),
];

describe("forged copies, a tenth of the kinds", () => {
  let copy: Uint8Array;
  beforeAll(async () => {
    copy = await shareCopy(new Uint8Array(readFileSync("templates/example-audit.xlsx")), new Date(2026, 10, 25));
  });

  it("are of at least 150 kinds in all", () => {
    expect(LOOK_KINDS.length + BOOK_KINDS.length).toBeGreaterThanOrEqual(150);
  });

  it.each(A_TENTH.map((forgery) => [forgery.kind, forgery] as const))("%s: is found", async (_, forgery) => {
    const { found: isFound, said } = await found(copy, forgery);
    expect({ isFound, said }).toMatchObject({ isFound: true });
    expect(said).not.toBe("");
  });
});
