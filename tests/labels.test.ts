import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { COSTS, PAYING } from "../src/core/figures/costs";
import { ASKED_FIRST, ENTRIES } from "../src/core/figures/entries";
import type { Figure } from "../src/core/figures/figure";
import { LAYOUT } from "../src/core/figures/layout";
import { MEASURES } from "../src/core/figures/measures";
import { RUN_TIME } from "../src/core/figures/run-time";
import { WATER } from "../src/core/figures/water";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
const FIGURES: readonly Figure[] = [MEASURES, RUN_TIME, WATER, COSTS, PAYING, LAYOUT].flatMap((table) =>
  Object.values<Figure>(table),
);
const ASKED = [ENTRIES, ASKED_FIRST].flatMap((table) => Object.values(table).map(({ label }) => label));

/** Words that a sheet, a step or a heading has too, or that a sentence may have: only before a unit are they a label. */
const OTHER_SENSES = new Set([
  "Run time",
  "Water",
  "Power",
  "Labour",
  "Fertiliser",
  "Flow",
  "Heads",
  "Pulses",
  "Saved",
  "Depth",
  "Cans",
]);
/** Names that no sentence has by chance: found anywhere in a text. */
const NAMES = [...FIGURES.map(({ name }) => name), ...ASKED].filter(
  (name) => name.length > 9 && !/^(SC, |Run time, |Needed now$|Together$|Price of |Efficiency of )/.test(name),
);
const SHORT = FIGURES.map(({ short }) => short).filter((short) => !OTHER_SENSES.has(short));

const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
const oneOf = (texts: readonly string[]) => [...new Set(texts)].map(escaped).join("|");
const ANYWHERE = new RegExp(`(?:${oneOf(NAMES)})(?![a-z])`);
/** A short name that begins or ends a text, or is before a unit, is a label. */
const IN_SHORT = new RegExp(`^(?:${oneOf(SHORT)})(?: at the cans| right|, | \\[|:? ?$)|(?:${oneOf(SHORT)}) \\[`);
const BEFORE_A_UNIT = /^(?:Run time|Power|Labour|Fertiliser) \[/;

/** Where a label is a contract, or another thing of the same words. */
const KEPT: Readonly<Record<string, string>> = {
  "Depth per pulse": "the name of what is typed for a block, in the messages of the Program",
  "Flow of the bed": "the flow that was measured, on the sheet Heads",
  "Share in the bed after, as used": "a step of the calculation, on the sheet Working",
};

const SHOWN_IN = new Set(["label", "heading", "title", "up", "caption", "aria-label", "value", "words", "says"]);

/** Whether a text that is a short name and no more is put where it is shown; elsewhere it is the id of a cell's name. */
function isShown(node: ts.Node): boolean {
  const { parent } = node;
  return (
    ts.isJsxText(node) ||
    (ts.isJsxAttribute(parent) && SHOWN_IN.has(parent.name.getText())) ||
    (ts.isPropertyAssignment(parent) && SHOWN_IN.has(parent.name.getText().replaceAll('"', "")))
  );
}

/** The labels that a source types by hand. */
function typedIn(name: string, source: string): string[] {
  const file = ts.createSourceFile(name, source, ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) return;
    if (
      ts.isJsxText(node) ||
      ts.isStringLiteralLike(node) ||
      ts.isTemplateHead(node) ||
      ts.isTemplateMiddleOrTemplateTail(node)
    ) {
      const text = node.text.trim();
      const bare = SHORT.includes(text);
      const label = bare ? isShown(node) : ANYWHERE.test(text) || IN_SHORT.test(text) || BEFORE_A_UNIT.test(text);
      if (label && !(text in KEPT)) found.push(`${name}: ${text.slice(0, 100)}`);
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

describe("a label of a figure or of an entry", () => {
  it.each([
    ['const a = { label: "DU" };', 1],
    ['const a = ["MAR [mm/h]"];', 1],
    ["const a = <th>CU</th>;", 1],
    ['const a = { note: "If a can is dry, SC (driest can) is infinite." };', 1],
    ['const a = <Field label="Can mouth, inside [mm]" />;', 1],
    ['const a = { name: "MAR", verdict: "Verdict_MAR" };', 0],
    ["const a = { label: MEASURES.DU.short };", 0],
    ['const a = { note: "From Run time." };', 0],
  ])("is seen in %s", (source, times) => {
    expect(typedIn("one.tsx", source)).toHaveLength(times);
  });

  it("is typed in the tables of figures only, but for what is a contract", () => {
    const files = readdirSync(`${ROOT}src`, { recursive: true, encoding: "utf8" }).filter(
      (file) => /\.tsx?$/.test(file) && !file.startsWith("core/figures/"),
    );
    expect(files.length).toBeGreaterThan(500);
    expect(files.flatMap((file) => typedIn(file, readFileSync(`${ROOT}src/${file}`, "utf8")))).toEqual([]);
  });
});
