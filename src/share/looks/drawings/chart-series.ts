import { areaOf } from "../../../cells/sheet-area";
import type { ChartSpec } from "../../../workbook/form/sheet-spec";
import { cellsIn, type FileBook } from "../../../xlsx/parts/workbook-file";
import { within, type XmlElement } from "../../../xlsx/parts/xml-tree";
import { sameNumber } from "../../check/agreement";

/** Some programs write the name of a series as a formula. */
const IN_QUOTES = /^"(.*)"$/s;
const DIGITS = 9;

const childNamed = (parent: XmlElement | undefined, ...names: string[]) =>
  parent?.children.find((one) => names.includes(one.name));
const firstIn = (parent: XmlElement | undefined, name: string) =>
  parent ? [...within(parent)].find((one) => one.name === name)?.text.trim() : undefined;

/** A range of a sheet in one form. */
export const rangeOn = (range: string, sheet: string): string => {
  const area = areaOf(range.includes("!") ? range.replace(/^'?(.*?)'?!/, "'$1'!") : range, sheet);
  return area && area.sheet === sheet ? `${area.top} ${area.left} ${area.bottom} ${area.right}` : range;
};

/** What a series is called: the range of its name, or words. */
function nameOf(series: XmlElement, sheet: string): string {
  const name = childNamed(series, "tx");
  const formula = firstIn(name, "f");
  if (formula === undefined) return firstIn(name, "v") ?? "";
  return IN_QUOTES.exec(formula)?.[1] ?? `=${rangeOn(formula, sheet)}`;
}

const isAscending = (numbers: readonly number[]) => numbers.every((one, i) => i === 0 || one > numbers[i - 1]!);

/** Whether each series has the name, the words along the axis and the numbers of the workbook's, in its order. */
export function isArranged(own: ChartSpec, sheet: string, series: readonly XmlElement[]): boolean {
  const orders = series.map((one) => Number(childNamed(one, "order")?.given.get("val") ?? 0));
  const arranged = own.series.every(({ name, across, values }, i) => {
    const here = series[i];
    const wanted = name.startsWith("=") ? `=${rangeOn(name.slice(1), sheet)}` : name;
    const [words, numbers] = [
      firstIn(childNamed(here, "cat", "xVal"), "f"),
      firstIn(childNamed(here, "val", "yVal"), "f"),
    ];
    return (
      here !== undefined &&
      nameOf(here, sheet) === wanted &&
      (words === undefined || rangeOn(words, sheet) === rangeOn(across, sheet)) &&
      rangeOn(numbers ?? "", sheet) === rangeOn(values, sheet)
    );
  });
  return arranged && isAscending(orders);
}

/** Whether the columns of a series are filled with its own colour, whole. */
export function isFilledWith(colour: string, series: XmlElement): boolean {
  const fill = childNamed(childNamed(series, "spPr"), "solidFill");
  return (
    childNamed(fill, "srgbClr")?.given.get("val")?.toLowerCase() === colour.slice(1).toLowerCase() &&
    ![...within(fill!)].some(({ name }) => name === "alpha")
  );
}

/** Whether the columns of a series are edged in another colour than their own, which eats up the small ones. */
export function isEdgedOtherwise(colour: string, series: XmlElement): boolean {
  const ink = childNamed(childNamed(childNamed(series, "spPr"), "ln"), "solidFill");
  return ink?.children.some(({ given }) => given.get("val")?.toLowerCase() !== colour.slice(1).toLowerCase()) ?? false;
}

const isOther = (kept: string, value: unknown) =>
  typeof value === "number"
    ? Number.isFinite(Number(kept)) &&
      !sameNumber(Number(Number(kept).toPrecision(DIGITS)), Number(value.toPrecision(DIGITS)))
    : typeof value === "string" && kept.trim() !== value.trim();

/** Whether the numbers and words that a chart keeps of its cells are other than theirs. */
export function keepsOther(book: FileBook, series: readonly XmlElement[]): boolean {
  return series
    .flatMap((one) => [...within(one)])
    .some((reference) => {
      if (reference.name !== "numRef" && reference.name !== "strRef") return false;
      const inside = [...within(reference)];
      const area = areaOf(inside.find(({ name }) => name === "f")?.text.trim() ?? "", "");
      if (!area) return false;
      const values = new Map(
        cellsIn(book, area).map(({ row, column, cell }) => [row === 1 ? column - 1 : row - 1, cell.value] as const),
      );
      return inside.some(
        (point) =>
          point.name === "pt" &&
          isOther(childNamed(point, "v")?.text ?? "", values.get(Number(point.given.get("idx")))),
      );
    });
}
