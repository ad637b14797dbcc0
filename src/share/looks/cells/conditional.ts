import { cellAt, firstCell, isRange, placesOf } from "../../../cells/places";
import { addressParts } from "../../../cells/sheet-area";
import { isMain } from "../../../xlsx/parts/namespaces";
import { childrenOf, isOn, type XmlElement } from "../../../xlsx/parts/xml-tree";
import { type Finding, misleading } from "../../finding";
import { normalFormula } from "../../same-formula";
import type { OwnSheet } from "../sheets/own-sheet";
import { contrast } from "./colours";
import { type FileLooks, laidColours } from "./file-looks";

interface Rule {
  places: Set<string>;
  /** As seen from the first cell of its range, so that a rule which looks elsewhere is another one. */
  formula: string;
  /** Of rules for one cell the one with the lowest number goes first. */
  order: number;
  colour: string | null;
  fill: string | null;
}

const LEAST_CONTRAST = 3;
const STRINGS = /"(?:[^"]|"")*"/g;
const REFERENCE = /(?<![A-Z0-9_.$])(\$?[A-Z]{1,3})(\$?\d{1,7})(?![A-Z0-9_(.])/gi;

/** Whether a rule shows what the workbook's own shows; programs fill in colours that it leaves as they are. */
function looksLike(own: Rule, seen: Rule): boolean {
  const same = (one: string | null, other: string | null) => one === null || one === other;
  if (!same(own.fill, seen.fill) || !same(own.colour, seen.colour)) return false;
  const filledIn = own.fill !== seen.fill || own.colour !== seen.colour;
  return !filledIn || contrast(seen.colour ?? "000000", seen.fill ?? own.fill ?? "ffffff") >= LEAST_CONTRAST;
}

const keyOf = ({ formula }: Rule) => formula;
/** A formula in the form of its own program or of another: some write FALSE as 0. */
const asNumbers = (formula: string, sheet: string) =>
  normalFormula(formula, sheet)
    .split("\u0001")
    .map((token) => (token === "TRUE" ? "1" : token === "FALSE" ? "0" : token))
    .join("\u0001");
/** A rule's formula with each reference by its distance from the first cell; two ranges with two first cells are told apart. */
function fromCell(formula: string, sheet: string, ranges: readonly string[]): string {
  const corners = ranges.map(firstCell).map(addressParts);
  const top = Math.min(...corners.map(({ row }) => row));
  const left = Math.min(...corners.map(({ column }) => column));
  const seen = [firstCell(ranges[0] ?? "A1"), cellAt(top, left)].map(
    (cell) => asNumbers(formula, sheet) + distances(formula, cell),
  );
  return seen[0] === seen[1] ? seen[0]! : seen.join(" or ");
}

/** Where the references of a formula lead from a cell, those without `$` by their distance. */
function distances(formula: string, cell: string): string {
  const from = addressParts(cell);
  return [...formula.replace(STRINGS, "").matchAll(REFERENCE)]
    .map(([, column = "", row = ""]) => {
      const at = addressParts(`${column}${row}`.replaceAll("$", ""));
      const across = column.startsWith("$") ? column : at.column - from.column;
      return `${across} ${row.startsWith("$") ? row : at.row - from.row}`;
    })
    .join(";");
}

const plain = (colour: string | undefined) => colour?.slice(1).toLowerCase() ?? null;

/** The rules of a sheet that are alike, with all cells of them. */
function together(rules: readonly Rule[]): Map<string, Rule> {
  const all = new Map<string, Rule>();
  for (const rule of rules) {
    const known = all.get(keyOf(rule));
    if (known) {
      for (const place of rule.places) known.places.add(place);
      known.order = Math.min(known.order, rule.order);
    } else all.set(keyOf(rule), { ...rule, places: new Set(rule.places) });
  }
  return all;
}

/** The first of two rules of the workbook for one cell that the file puts in another order. */
function exchanged(wanted: ReadonlyMap<string, Rule>, here: ReadonlyMap<string, Rule>): Rule | undefined {
  const both = [...wanted].flatMap(([key, own]) => {
    const seen = here.get(key);
    return seen ? [{ own, seen }] : [];
  });
  const sorted = both.sort((one, other) => one.own.order - other.own.order);
  return sorted.find(({ own, seen }, index) =>
    sorted
      .slice(index + 1)
      .some((later) => later.seen.order <= seen.order && [...own.places].some((place) => later.own.places.has(place))),
  )?.own;
}

const KNOWN = new WeakMap<OwnSheet, Map<string, Rule>>();

function ownRules(own: OwnSheet): Map<string, Rule> {
  const before = KNOWN.get(own);
  if (before) return before;
  const rules = own.shades.map(
    ({ range, formula, fill, colour }, order): Rule => ({
      places: new Set(placesOf(range)),
      formula: fromCell(formula, own.name, [range]),
      order,
      colour: plain(colour),
      fill: plain(fill),
    }),
  );
  const all = together(rules);
  KNOWN.set(own, all);
  return all;
}

/** Conditional formats other than the workbook's own, and those of its own that are missing. */
export function conditionalFindings(own: OwnSheet, frame: XmlElement, looks: FileLooks): Finding[] {
  const found: Finding[] = [];
  const rules: Rule[] = [];
  for (const block of childrenOf(frame, isMain, "conditionalFormatting")) {
    const ranges = (block.given.get("sqref") ?? "").split(/\s+/).filter(Boolean);
    for (const rule of childrenOf(block, isMain, "cfRule")) {
      const type = rule.given.get("type") ?? "";
      const formulas = childrenOf(rule, isMain, "formula").map(({ text }) => text);
      const where = `${own.name}!${ranges[0] ?? ""}`;
      const laid = laidColours(looks, Number(rule.given.get("dxfId") ?? -1));
      const known = ranges.length > 0 && ranges.every(isRange);
      if (
        !known ||
        type !== "expression" ||
        formulas.length !== 1 ||
        laid.odd ||
        laid.format ||
        isOn(rule.given.get("stopIfTrue"))
      ) {
        found.push(
          misleading(
            where,
            "a conditional format that is not the workbook's changes its looks",
            "",
            type,
            "conditional",
          ),
        );
        continue;
      }
      rules.push({
        places: new Set(ranges.flatMap((range) => placesOf(range))),
        formula: fromCell(formulas[0]!, own.name, ranges),
        order: Number(rule.given.get("priority") ?? 0),
        colour: laid.colour,
        fill: laid.fill,
      });
    }
  }
  const [wanted, here] = [ownRules(own), together(rules)];
  for (const [key, rule] of here) {
    const like = wanted.get(key);
    const beyond =
      like && looksLike(like, rule) ? [...rule.places].filter((place) => !like.places.has(place)) : [...rule.places];
    if (beyond.length === 0) continue;
    const where = `${own.name}!${beyond[0]}`;
    found.push(
      misleading(where, "a conditional format that is not the workbook's changes its looks", "", "", "conditional"),
    );
  }
  for (const [key, rule] of wanted) {
    const missing = [...rule.places].filter((place) => !here.get(key)?.places.has(place));
    if (missing.length === 0) continue;
    found.push(
      misleading(
        `${own.name}!${missing[0]}`,
        "a conditional format of the workbook is missing",
        "",
        "",
        "unconditional",
      ),
    );
  }
  const first = exchanged(wanted, here);
  if (first) {
    const where = `${own.name}!${[...first.places][0]}`;
    found.push(
      misleading(where, "conditional formats are in another order than the workbook's", "", "", "conditional"),
    );
  }
  return found;
}
