import { DAYS_TO_1904 } from "../../cells/day-number";
import { plainText } from "../parts/cell-value";
import { isOn, within, type XmlElement } from "../parts/xml-tree";
import type { Validation } from "./book";
import { typedFormula } from "./formula";
import { addressesOf, type Extent, placesOf, textIn } from "./place";

const TYPES = ["list", "whole", "decimal", "date", "time", "textLength", "custom"] as const;
const COMPARING = ["whole", "decimal", "date", "time", "textLength"];
const STYLES = ["stop", "warning", "information"] as const;

/** An operand as people type it: a literal list without its quotes, a number, or a formula. */
function operand(text: string): string {
  const literal = /^"(.*)"$/s.exec(text);
  if (literal) return literal[1]!.replaceAll('""', '"');
  return text === "" || Number.isFinite(Number(text)) ? text : typedFormula(text);
}

/** The check that an element says. */
function validationOf(element: XmlElement, extent: Extent, from1904: boolean): Validation {
  const { given } = element;
  const words = (name: string) => plainText(given.get(name) ?? "");
  const type = TYPES.find((one) => one === given.get("type")) ?? "any";
  const late = from1904 && type === "date";
  const day = (one: string) =>
    late && one !== "" && Number.isFinite(Number(one)) ? String(Number(one) + DAYS_TO_1904) : one;
  const operator = given.get("operator") ?? (COMPARING.includes(type) ? "between" : undefined);
  const formulas = ["formula1", "formula2"]
    .flatMap((name) => textIn(element, name) ?? [])
    .map(operand)
    .map(day);
  const style = STYLES.find((one) => one === given.get("errorStyle")) ?? "stop";
  const prompt = words("prompt");
  return {
    places: placesOf(addressesOf(element), extent),
    type,
    ...(operator && { operator }),
    formulas,
    allowBlank: isOn(given.get("allowBlank")),
    ...(isOn(given.get("showErrorMessage")) && {
      refusal: { style, title: words("errorTitle"), text: words("error") },
    }),
    ...(isOn(given.get("showInputMessage")) &&
      prompt !== "" && { prompt: { title: words("promptTitle"), text: prompt } }),
  };
}

/** The checks of a sheet's part, those in its newer parts too. */
export function validationsOf(root: XmlElement, extent: Extent, from1904 = false): Validation[] {
  return [...within(root)]
    .filter(({ name }) => name === "dataValidation")
    .map((one) => validationOf(one, extent, from1904));
}
