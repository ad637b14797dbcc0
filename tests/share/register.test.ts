import { Workbook } from "@cj-tech-master/excelts";
import { describe, expect, it } from "vitest";
import type { CheckedFile, CopyReport } from "../../src/share/copy-report";
import { csvOf } from "../../src/share/csv";
import { otherCodes, withFirstCodes } from "../../src/share/other-codes";
import { REGISTER_HEADINGS, registerRow } from "../../src/share/register-row";
import { checkedFile, registerTable } from "../../src/share/register-table";
import { buildWorkbook } from "../../src/workbook/form/build";

const figure = (name: string, stated: number, agrees = true) => ({
  name,
  place: "Results!B4",
  label: name,
  unit: "",
  stated,
  recomputed: stated,
  shown: String(stated),
  format: "0.0",
  agrees,
});

function report(site: string, agrees = true): CopyReport {
  const figures = [figure("Used_MAR", 12.5), figure("Used_SC_Can", -1.5, agrees)];
  const facts = { site, block: "7", date: "2026-11-25", kind: "audit" };
  return {
    facts,
    line: null,
    figures,
    findings: [],
    follows: [],
    agrees,
    code: "",
    oldCode: "",
    own: null,
    sentence: "",
    news: "",
  };
}

const text = (bytes: Uint8Array) => new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes);

describe("the register of copies", () => {
  it("has one line a file, with what the copy states and whether it agrees", () => {
    const good: CheckedFile = { name: "a.xlsx", report: report("Example Nursery"), problem: "" };
    expect(registerRow(good)).toEqual([
      "a.xlsx",
      "Example Nursery",
      "7",
      "2026-11-25",
      12.5,
      "",
      "",
      -1.5,
      "",
      "",
      "agrees",
      "",
    ]);
    const wrong: CheckedFile = { name: "b.xlsx", report: report("Example Nursery", false), problem: "" };
    expect(registerRow(wrong).slice(-2)).toEqual(["does not agree", "Used_SC_Can in Results!B4: does not agree."]);
    expect(registerRow(good)).toHaveLength(REGISTER_HEADINGS.length);
  });

  it("keeps the first code of a site, block and date, and names both files where a later one has another", () => {
    const coded = (name: string, code: string): CheckedFile => ({
      name,
      report: { ...report("Example Nursery"), code },
      problem: "",
    });
    const files = [coded("a.xlsx", "1111"), coded("again.xlsx", "1111"), coded("b.xlsx", "2222")];
    const others = otherCodes(files);
    expect(others.slice(0, 2)).toEqual(["", ""]);
    expect(others[2]).toMatch(/as a\.xlsx, whose code is 1111; b\.xlsx has the code 2222/);
  });

  it("compares with the first code of an earlier session too, which stays the first", () => {
    const coded = (name: string, code: string): CheckedFile => ({
      name,
      report: { ...report("Example Nursery"), code },
      problem: "",
    });
    const kept = withFirstCodes(new Map(), [coded("a.xlsx", "1111")]);
    const later = withFirstCodes(kept, [coded("b.xlsx", "2222")]);
    expect(otherCodes([coded("b.xlsx", "2222")], kept)[0]).toMatch(/as a\.xlsx, whose code is 1111; b\.xlsx has/);
    expect(otherCodes([coded("a2.xlsx", "1111")], later)).toEqual([""]);
    expect([...later.values()]).toEqual([{ name: "a.xlsx", code: "1111" }]);
  });

  it("takes a site for the same whose name differs by what nobody sees", () => {
    const coded = (site: string, code: string): CheckedFile => ({
      name: `${code}.xlsx`,
      report: { ...report(site), code },
      problem: "",
    });
    const same = ["Ex\u0430mple Nursery", "Example\u200b Nursery", "Example\u00a0 nursery "];
    const others = otherCodes([coded("Example Nursery", "1"), ...same.map((site, index) => coded(site, `2${index}`))]);
    expect(others.map((said) => said !== "")).toEqual([false, true, true, true]);
    expect(otherCodes([coded("Example Nursery 1", "1"), coded("Example Nursery l", "2")])).toEqual(["", ""]);
  });

  it("says why a file could not be read", async () => {
    const checked = await checkedFile("notes.txt", new TextEncoder().encode("hello"));
    expect(registerRow(checked)).toEqual([
      "notes.txt",
      ...Array(9).fill(""),
      "not read",
      'the file must be an .xlsx workbook, got "a file of another kind"',
    ]);
  });

  it("takes a workbook that is no audit", async () => {
    const file = await buildWorkbook([{ name: "Cans of paint", widths: [10], cells: [] }], {});
    const { report: found } = await checkedFile("paint.xlsx", file);
    expect(found).toMatchObject({ agrees: false, figures: [], facts: { kind: "workbook without the audit's sheets" } });
  });

  it("never writes text as a formula, in .csv or .xlsx; numbers stay numbers", async () => {
    const evil = ['=HYPERLINK("x")', "+1", "-1", "@SUM(A1)", "\t=1", "\r=1"];
    const files = evil.map((site): CheckedFile => ({ name: "a.xlsx", report: report(site), problem: "" }));
    const { rows, xlsx } = await registerTable(files);
    const csv = csvOf(rows);
    const lines = text(csv).split("\r\na.xlsx,").slice(1);
    expect(lines.map((line) => line.replace(/^"/, "").charAt(0))).toEqual(evil.map(() => "'"));
    expect(lines[0]).toBe(`"'=HYPERLINK(""x"")",7,2026-11-25,12.5,,,-1.5,,,agrees,`);
    const book = new Workbook();
    await book.xlsx.load(xlsx);
    const sheet = book.getWorksheet("Register")!;
    expect(evil.map((_, i) => String(sheet.getCell(`B${i + 2}`).value).charAt(0))).toEqual(evil.map(() => "'"));
    expect(sheet.getCell("B2").value).toBe(`'=HYPERLINK("x")`);
    expect(sheet.getCell("H2").value).toBe(-1.5);
  });

  it("is UTF-8 with a mark at its start, lines ended by CR LF, quotes doubled", async () => {
    const odd: CheckedFile = { name: 'a "b", c.xlsx', report: report("Baumschule Grün\nNord"), problem: "" };
    const csv = csvOf((await registerTable([odd])).rows);
    expect([...csv.slice(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    const [heading, line] = text(csv).slice(1).split("\r\n");
    expect(heading).toBe(REGISTER_HEADINGS.join(","));
    expect(line).toBe('"a ""b"", c.xlsx","Baumschule Grün\nNord",7,2026-11-25,12.5,,,-1.5,,,agrees,');
  });
});
