import type { Style, Worksheet } from "@cj-tech-master/excelts";
import { columnLetters } from "../../cells/letters";
import type { Condition } from "./book";
import { typedFormula } from "./formula";
import { lookOf } from "./look";
import { type Extent, placesOf } from "./place";

const SIGNS: Record<string, string> = {
  equal: "=",
  notEqual: "<>",
  greaterThan: ">",
  greaterThanOrEqual: ">=",
  lessThan: "<",
  lessThanOrEqual: "<=",
};

/** What excelts reads of a rule. */
interface Rule {
  type: string;
  operator?: string;
  formulae?: (string | number)[];
  priority?: number;
  style?: Partial<Style>;
}

/** A rule about a cell's value as a formula about the first cell; undefined for what no formula says, such as bars. */
function formulaOf({ type, operator = "", formulae = [] }: Rule, cell: string): string | undefined {
  const [one, two] = formulae.map((formula) => typedFormula(String(formula)).slice(1));
  if (one === undefined) return undefined;
  if (type !== "cellIs") return `=${one}`;
  if (operator === "between") return `=AND(${cell}>=${one},${cell}<=${two})`;
  if (operator === "notBetween") return `=OR(${cell}<${one},${cell}>${two})`;
  return SIGNS[operator] ? `=${cell}${SIGNS[operator]}${one}` : undefined;
}

/** The conditional formats of a file's sheet, the one that wins first. */
export function conditionsOf({ conditionalFormattings }: Worksheet, extent: Extent): Condition[] {
  const all = conditionalFormattings.flatMap(({ ref, rules }) => {
    const places = placesOf(ref, extent);
    const [first] = places;
    if (!first) return [];
    const cell = `${columnLetters(first.startColumn + 1)}${first.startRow + 1}`;
    return (rules as Rule[]).flatMap((rule) => {
      const formula = formulaOf(rule, cell);
      const look = lookOf(rule.style ?? {});
      if (!formula || !look) return [];
      return [{ order: rule.priority ?? 0, condition: { places, formula, look } }];
    });
  });
  return all.sort((a, b) => a.order - b.order).map(({ condition }) => condition);
}
