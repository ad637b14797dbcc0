import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { GLOSSARY, NOT_SAID } from "../src/core/figures/glossary";
import { AUDIT_SHEETS } from "../src/workbook/audit/audit";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
const BANNED = [...GLOSSARY.flatMap(({ not }) => not), ...NOT_SAID];

/** Texts of a source file that a person may read: strings with a space, templates and the text of elements. */
function textsOf(file: string): string[] {
  const source = ts.createSourceFile(file, readFileSync(`${ROOT}${file}`, "utf8"), ts.ScriptTarget.Latest, true);
  const texts: string[] = [];
  const visit = (node: ts.Node): void => {
    if (
      ts.isJsxText(node) ||
      ts.isStringLiteralLike(node) ||
      ts.isTemplateHead(node) ||
      ts.isTemplateMiddleOrTemplateTail(node)
    ) {
      if (/\w \w/.test(node.text)) texts.push(node.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return texts;
}

const files = readdirSync(`${ROOT}src`, { recursive: true, encoding: "utf8" })
  .filter((file) => /\.tsx?$/.test(file) && !file.endsWith("glossary.ts"))
  .map((file) => `src/${file}`);

const saidIn = (texts: readonly string[]) =>
  texts.flatMap((text) =>
    BANNED.filter((phrase) => phrase.test(text)).map((phrase) => `${phrase} in: ${text.slice(0, 120)}`),
  );

describe("the glossary", () => {
  it("has one meaning a term", () => {
    const terms = GLOSSARY.map(({ term }) => term);
    expect(new Set(terms).size).toBe(terms.length);
    expect(GLOSSARY.every(({ meaning }) => meaning.length > 10)).toBe(true);
  });

  it("finds a banned phrase in a text", () => {
    expect(saidIn(["The figure is worked out by hand"])).toHaveLength(1);
    expect(saidIn(["The figure is calculated by hand"])).toEqual([]);
  });
});

describe("no banned phrase", () => {
  it("is in the texts of the code", () => {
    expect(files.length).toBeGreaterThan(500);
    expect(files.flatMap((file) => saidIn(textsOf(file)).map((found) => `${file}: ${found}`))).toEqual([]);
  });

  it("is on the sheets", () => {
    const texts = AUDIT_SHEETS.flatMap(({ cells }) =>
      cells.flatMap(({ value, formula }) => [String(value ?? ""), formula ?? ""]),
    );
    expect(saidIn(texts)).toEqual([]);
  });

  it("is in the README", () => {
    expect(saidIn(readFileSync(`${ROOT}README.md`, "utf8").split("\n"))).toEqual([]);
  });
});
