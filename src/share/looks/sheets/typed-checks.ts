import { isRange, placesOf } from "../../../cells/places";
import { CHECK_TITLE } from "../../../workbook/form/checks";
import type { CheckSpec } from "../../../workbook/form/sheet-spec";
import { isMain } from "../../../xlsx/parts/namespaces";
import { childOf, childrenOf, isOn, type XmlElement } from "../../../xlsx/parts/xml-tree";
import { type Finding, misleading } from "../../finding";
import { normalFormula } from "../../same-formula";
import type { OwnSheet } from "./own-sheet";

/** What a check of typed values asks and says, apart from where. */
interface TypedCheck {
  type: string;
  says: string;
  /** What it asks, in the form in which `normalFormula` gives formulas; null where the first cell's place is in it. */
  asks: string | null;
}

/** Programs save numbers with 15 digits. */
const DIGITS = 12;
const plain = (formula: string | number, sheet: string) =>
  String(formula).trim() !== "" && Number.isFinite(Number(formula))
    ? Number(formula).toPrecision(DIGITS)
    : normalFormula(String(formula), sheet);

const LATEST_DAY = "73050";

function ownAsks(rule: CheckSpec["rule"], sheet: string): Pick<TypedCheck, "type" | "asks"> {
  const normal = (...formulas: (string | number)[]) => formulas.map((one) => plain(one, sheet)).join(" ");
  switch (rule.kind) {
    case "list":
      return { type: "list", asks: normal("of" in rule ? `"${rule.of.join(",")}"` : rule.from) };
    case "date":
      return { type: "date", asks: normal(1, LATEST_DAY) };
    case "formula":
      return { type: "custom", asks: null };
    case "number":
      return { type: rule.whole ? "whole" : "decimal", asks: normal(rule.least ?? -1e12, rule.most ?? 1e12) };
  }
}

function asked(element: XmlElement, type: string, sheet: string): string | null {
  if (type === "custom") return null;
  const formulas = ["formula1", ...(type === "list" ? [] : ["formula2"])].map(
    (name) => childOf(element, isMain, name)?.text ?? "",
  );
  return formulas.map((one) => plain(one, sheet)).join(" ");
}

const known = new WeakMap<OwnSheet, ReadonlyMap<string, TypedCheck>>();

function ownChecks(own: OwnSheet): ReadonlyMap<string, TypedCheck> {
  const before = known.get(own);
  if (before) return before;
  const checks = new Map(
    own.checks.flatMap(({ range, rule, message }) => {
      const check = { ...ownAsks(rule, own.name), says: message };
      return placesOf(range).map((place) => [place, check] as const);
    }),
  );
  known.set(own, checks);
  return checks;
}

/** How a check of a file differs from the workbook's own at a cell; "" where it does not. */
function differs(own: TypedCheck | undefined, { given }: XmlElement, type: string, asks: string | null): string {
  if (!own) return "checks what is typed, where Canfall's own workbook does not";
  const bounds = type === "list" || type === "custom" || (given.get("operator") ?? "between") === "between";
  if (own.type !== type || own.asks !== asks || !bounds) {
    return "lets other values be typed than Canfall's own workbook does";
  }
  if ((given.get("errorStyle") ?? "stop") !== "stop" || !isOn(given.get("showErrorMessage"))) {
    return "only warns of a wrong value, or says nothing";
  }
  const title = given.get("errorTitle") ?? "";
  if ((given.get("error") ?? "") !== own.says || (title !== "" && title !== CHECK_TITLE))
    return "says other words when a wrong value is typed";
  return "";
}

/** Checks of what is typed that are not the workbook's own. */
export function typedCheckFindings(own: OwnSheet, frame: XmlElement): Finding[] {
  const checks = ownChecks(own);
  const used = own.places;
  return childrenOf(childOf(frame, isMain, "dataValidations"), isMain, "dataValidation").flatMap((element) => {
    const type = element.given.get("type") ?? "none";
    if (type === "none") return [];
    const asks = asked(element, type, own.name);
    const ranges = (element.given.get("sqref") ?? "").split(/\s+/).filter(Boolean);
    if (!ranges.every(isRange)) return [misleading(own.name, "checks what is typed far beyond its cells")];
    const places = ranges.flatMap((range) => placesOf(range));
    for (const place of places) {
      if (!used.has(place)) continue;
      const what = differs(checks.get(place), element, type, asks);
      if (what)
        return [misleading(`${own.name}!${place}`, what, checks.get(place)?.says, element.given.get("error"), "check")];
    }
    return [];
  });
}
