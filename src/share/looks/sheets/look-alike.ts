import { firstCell } from "../../../cells/places";
import { addressParts } from "../../../cells/sheet-area";
import type { SheetSpec } from "../../../workbook/form/sheet-spec";
import type { BookSheet, FileBook } from "../../../xlsx/parts/workbook-file";
import { added, type Finding, misleading } from "../../finding";
import { shortened } from "../../shortened";
import type { OwnSheet } from "./own-sheet";

/** Cyrillic and Greek letters that look like Latin ones (Unicode confusables, the usual ones). */
const PAIRS =
  "аa еe оo рp сc хx уy іi јj ѕs ԁd ԛq ԝw һh Αa Βb Εe Ζz Ηh Ιi Κk Μm Νn Οo Ρp Τt Υy Χx Аa Вb Еe Кk Мm Нh Оo Рp Сc Тt Хx Іi Ѕs οo νv αa ιi ѵv тt кk мm нh вb";
const LIKE: Readonly<Record<string, string>> = Object.fromEntries(
  PAIRS.split(" ").map((pair) => [...pair] as [string, string]),
);
const FEWEST_ALIKE = 8;
/** A text that nobody writes by chance as the workbook does. */
const LONG_TEXT = 12;

/** A text as it looks: letters that look alike are one, signs that cannot be seen are none. */
export const asSeen = (text: string): string =>
  [...text.normalize("NFKD")]
    .map((sign) => LIKE[sign] ?? sign)
    .join("")
    .toLowerCase()
    .replace(/[lI|1]/g, "i")
    .replace(/0/g, "o")
    .replace(/[^a-z]/g, "");

/** A name without what tells it apart from another to a program only: case, blanks, signs unseen, letters of another script. */
export const sameToTheEye = (name: string): string =>
  [...name.normalize("NFKC")]
    .map((sign) => LIKE[sign] ?? sign)
    .join("")
    .replace(/[\p{Cf}\u3164\u2800]/gu, "")
    .replace(/\s+/g, " ")
    .trim()
    .toLowerCase();

const SCRIPTS: readonly [RegExp, string][] = [
  [/\p{Script=Cyrillic}/u, "Cyrillic"],
  [/\p{Script=Greek}/u, "Greek"],
];

const UNSEEN = /[\p{Cf}\p{Co}\p{Variation_Selector}\u00a0\u115f\u1160\u2800\u3164]|(?![\t\n\r])\p{Cc}/u;
const BLANKS = /^\s|\s$|\s{2}|[\t\u2000-\u200a\u2028\u2029\u3000]/;

/** Whether a word has letters of two scripts that look like one. */
export const mixesScripts = (text: string): boolean =>
  text
    .split(/[^\p{L}\p{M}]+/u)
    .some((word) => /\p{Script=Latin}/u.test(word) && [...word].some((sign) => sign in LIKE));

/** `a Cyrillic letter that looks like C`, where a text holds such a letter, or what cannot be seen; else "". */
export function strangeSign(text: string): string {
  for (const sign of text) {
    const script = SCRIPTS.find(([of]) => of.test(sign))?.[1];
    if (script && LIKE[sign]) {
      const like = sign === sign.toUpperCase() ? LIKE[sign].toUpperCase() : LIKE[sign];
      return `a ${script} letter that looks like ${like}`;
    }
  }
  if (UNSEEN.test(text)) return "a sign that cannot be seen";
  return BLANKS.test(text) ? "blanks or empty lines around it or within" : "";
}

/** How many texts of a sheet are at the same places as those of a sheet of the workbook. */
function alikeCells(sheet: BookSheet, spec: SheetSpec): number {
  return spec.cells.filter(({ at, value }) => value !== undefined && sheet.cells.get(firstCell(at))?.value === value)
    .length;
}

const longTexts = new WeakMap<readonly SheetSpec[], ReadonlyMap<unknown, string>>();

/** The long texts of the workbook, each with the sheet that it is on. */
function textsOf(specs: readonly SheetSpec[]): ReadonlyMap<unknown, string> {
  const texts =
    longTexts.get(specs) ??
    new Map(
      specs.flatMap(({ name, cells }) =>
        cells.flatMap(({ value }) => (String(value ?? "").length >= LONG_TEXT ? [[value, name] as const] : [])),
      ),
    );
  longTexts.set(specs, texts);
  return texts;
}

/** The sheet of the workbook from which another one repeats many texts, wherever it has them. */
function repeatedFrom(sheet: BookSheet, specs: readonly SheetSpec[]): string | undefined {
  const texts = textsOf(specs);
  const from = [...new Set([...sheet.cells.values()].map(({ value }) => value))].flatMap(
    (value) => texts.get(value) ?? [],
  );
  return from.length >= FEWEST_ALIKE ? from[0] : undefined;
}

/** Whether one text becomes the other by a letter more, less, other or exchanged with its neighbour. */
function isNear(one: string, other: string): boolean {
  const [short, long] = one.length <= other.length ? [one, other] : [other, one];
  if (short.length < 5 || long.length - short.length > 1) return false;
  let at = 0;
  while (at < short.length && short[at] === long[at]) at += 1;
  if (long.length > short.length) return short.slice(at) === long.slice(at + 1);
  const exchanged = short[at] === long[at + 1] && short[at + 1] === long[at];
  return short.slice(at + 1) === long.slice(at + 1) || (exchanged && short.slice(at + 2) === long.slice(at + 2));
}

const nameLike = (name: string, names: readonly string[]) => {
  const seen = asSeen(name);
  return names.find((known) => seen !== "" && (seen.includes(asSeen(known)) || isNear(seen, asSeen(known))));
};

/** Sheets that the workbook does not have: those that look like one of its own, and others. */
export function ownSheetFindings(book: FileBook, specs: readonly SheetSpec[], known: readonly string[]): Finding[] {
  const names = new Set([...specs.map(({ name }) => name), ...known]);
  const charts = book.others.flatMap(({ name }) => {
    const like = nameLike(name, [...names]);
    return like ? [misleading(name, `is a sheet with a chart that has nearly the name of ${like}`, like, name)] : [];
  });
  const cells = book.sheets.flatMap((sheet) => {
    if (names.has(sheet.name)) return [];
    const like = nameLike(sheet.name, [...names]);
    const copy =
      like ?? specs.find((spec) => alikeCells(sheet, spec) >= FEWEST_ALIKE)?.name ?? repeatedFrom(sheet, specs);
    if (!copy) return [added(sheet.name, "is a sheet that Canfall's own workbook does not have")];
    const sign = strangeSign(sheet.name);
    return [
      misleading(
        sheet.name,
        `is a sheet that looks like ${copy}${sign ? `: its name has ${sign}` : ""}`,
        copy,
        sheet.name,
      ),
    ];
  });
  return [...cells, ...charts];
}

/** Text in cells that a sheet of the workbook leaves empty. */
export function strayFindings({ name, places, used }: OwnSheet, sheet: BookSheet): Finding[] {
  const last = Math.max(...used.map(({ column }) => column));
  return [...sheet.cells].flatMap(([address, { value, error, formula }]) => {
    if (places.has(address) || (formula === undefined && error === undefined && value === null)) return [];
    if (value === "" && formula === undefined && addressParts(address).column > last) return [];
    const said = shortened(String(error ?? value ?? ""), 60);
    return [
      misleading(`${name}!${address}`, `holds "${said}", where the workbook has an empty cell`, "blank", said, "stray"),
    ];
  });
}
