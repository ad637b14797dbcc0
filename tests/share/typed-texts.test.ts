import { beforeAll, describe, expect, it } from "vitest";
import { checkCopy } from "../../src/share/check/check-copy";
import { shareCopy } from "../../src/share/copy/share-copy";
import { EXAMPLE_ENTRIES } from "../../src/workbook/audit/example";
import { calculatedAudits } from "../support/templates";
import { TYPED_TEXTS } from "./forged/seventh-kinds";

const A_THIRD = TYPED_TEXTS.filter((_, index) => index % 3 === 0);
/** A name and remarks as people write and paste them: lines, accents, other scripts, a link's blank, an emoji. */
const USUAL = {
  Site_Name: "Baumschule Müller\nHauptstraße 7\n22767 Hamburg",
  Block_Name: "Питомник 3 / βόρειο τμήμα",
  Auditor: "مدقق الري ۱۲",
  Audit_Remark: "Wind rose at 7:10;\u00a0see photos 👩‍🌾.\nHead 4 leaned.\n\nNozzles 2 × 1.6 mm, 30 °C.\n",
};

describe("what was typed before the copy was made", () => {
  const copies: Uint8Array[] = [];
  beforeAll(async () => {
    const entries = [...A_THIRD.map(([, text]) => ({ Block_Name: text })), USUAL];
    const files = await calculatedAudits(entries.map((entry) => ({ ...EXAMPLE_ENTRIES, ...entry })));
    for (const file of files) copies.push(await shareCopy(file, new Date(2026, 10, 25)));
  }, 120_000);

  it.each(A_THIRD.map(([kind, , named], index) => [kind, named === true, index] as const))(
    "%s: is found in the copy, whose list and code fit it",
    async (_, named, index) => {
      const { agrees, findings } = await checkCopy(copies[index]!);
      expect(findings.map(({ class: kind, where }) => [kind, where])).toEqual([
        [named ? "added" : "hides or misleads", "Block!B7"],
      ]);
      expect(agrees).toBe(named);
    },
  );

  it("accuses nobody who writes lines, accents or another script", async () => {
    expect((await checkCopy(copies.at(-1)!)).findings).toEqual([]);
  });
});
