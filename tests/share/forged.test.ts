import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { checkCopy } from "../../src/share/check/check-copy";
import { shareCopy } from "../../src/share/copy/share-copy";
import { AUDIT_KINDS } from "./forged/audit-kinds";
import { ForgedFile } from "./forged/forged-file";
import { found } from "./forged/outcome";
import { PLAN_KINDS } from "./forged/plan-kinds";

const A_TENTH = AUDIT_KINDS.filter((_, index) => index % 10 === 4);

describe("forged copies, a tenth of the kinds", () => {
  let copy: Uint8Array;
  let plan: Uint8Array;
  beforeAll(async () => {
    plan = await shareCopy(new Uint8Array(readFileSync("templates/example-nursery.xlsx")), new Date(2026, 10, 25));
    copy = await shareCopy(new Uint8Array(readFileSync("templates/example-audit.xlsx")), new Date(2026, 10, 25));
  });

  it("are of at least 150 kinds in all", () => {
    expect(AUDIT_KINDS.length).toBeGreaterThanOrEqual(150);
  });

  it.each(A_TENTH.map((forgery) => [forgery.kind, forgery] as const))("%s: is found", async (_, forgery) => {
    const { found: isFound, said } = await found(copy, forgery);
    expect({ isFound, said }).toMatchObject({ isFound: true });
    expect(said).not.toBe("");
  });

  it.each([
    ["changed", (tag: string) => tag.replace(/<v>[^<]*/, "<v>41"), 'was "30" when the copy was made and is "41".'],
    ["deleted", (tag: string) => tag.replace(/<v>[^<]*<\/v>/, ""), 'was "30" when the copy was made and is blank.'],
  ])("one reading %s is one finding; what follows from it is told apart and hides nothing", async (_, change, said) => {
    const file = new ForgedFile(copy);
    file.cell("Cans", "H8", change);
    const { findings, follows } = await checkCopy(file.bytes());
    expect(findings.map(({ class: kind, text }) => [kind, text])).toEqual([
      ["changed", `The reading in Cans!H8 (row 3, column 2 of the cans) ${said}`],
    ]);
    expect(follows.length).toBeGreaterThan(50);
  });

  // ECMA-376 part 1, 18.18.11: a cell of the type d holds a date of ISO 8601; 46336 days after 1899-12-30 is 2026-11-10.
  it("a day written as the strict form of the file writes it accuses nobody, another day is found", async () => {
    const checked = (written: string) => {
      const file = new ForgedFile(copy);
      file.cell("Block", "B9", (tag) => tag.replace("<v>46336</v>", `<v>${written}</v>`).replace("<c ", '<c t="d" '));
      return checkCopy(file.bytes());
    };
    for (const day of ["2026-11-10", "2026-11-10T00:00:00", "2026-11-10T00:00:00Z"]) {
      expect((await checked(day)).findings).toEqual([]);
    }
    expect((await checked("2026-11-11")).findings[0]?.text).toContain('was "2026-11-10"');
  });

  // ECMA-376 part 1, 21.2.2 and 20.1: a layout by hand within the chart, words as they fit, the grey of words by default.
  it("a chart as other programs may save it, or moved a little, accuses nobody", async () => {
    const file = new ForgedFile(copy);
    const change = (from: string | RegExp, to: string) => file.change("xl/charts/chart1.xml", from, to);
    change(
      "<c:plotArea>",
      '<c:plotArea><c:layout><c:manualLayout><c:layoutTarget val="inner"/><c:xMode val="edge"/><c:yMode val="edge"/><c:x val="0.1"/><c:y val="0.15"/><c:w val="0.85"/><c:h val="0.6"/></c:manualLayout></c:layout>',
    );
    change('<c:legendPos val="b"/>', '<c:legendPos val="b"/><c:layout/>');
    change(/(<c:valAx>.*?)<a:bodyPr\/>/, '$1<a:bodyPr rot="-60000000" vert="horz"/>');
    change(
      '<a:rPr sz="1200" b="1"/>',
      '<a:rPr sz="1200" b="1"><a:solidFill><a:schemeClr val="tx1"><a:lumMod val="65000"/><a:lumOff val="35000"/></a:schemeClr></a:solidFill></a:rPr>',
    );
    change("<c:gapWidth", '<c:dLbls><c:showVal val="0"/><c:showSerName val="0"/></c:dLbls><c:gapWidth');
    change("</c:plotArea>", '<c:spPr><a:solidFill><a:schemeClr val="bg1"/></a:solidFill></c:spPr></c:plotArea>');
    const { agrees, findings } = await checkCopy(file.bytes());
    expect({ agrees, findings }).toEqual({ agrees: true, findings: [] });
  });

  it.each(PLAN_KINDS.filter((_, index) => index % 10 === 1).map((forgery) => [forgery.kind, forgery] as const))(
    "%s: is found",
    async (_, forgery) => {
      const { found: isFound, said } = await found(plan, forgery);
      expect({ isFound, said }).toMatchObject({ isFound: true });
    },
  );
});
