import type { Area } from "../../cells/area";
import { boxOf, reference } from "../../cells/box";
import { lackOf } from "../answer/missing";
import type { Setting } from "../answer/resolve";
import type { Settings } from "../answer/settings";
import type { Measure, Need } from "./measures";

/** A formula and the size of its answer in cells, or what is lacking before it can be written. */
export type Formula = { text: string; rows: number; columns: number } | { lacking: string };

const settingOf = (need: Need) => (need === "basis" ? "share" : need);

function argument(need: Need, settings: Settings, sheet: string): string | null {
  if (need === "basis" && settings.basis !== "share") return settings.basis === "can" ? "" : '"quarter"';
  const setting: Setting<number | "mm"> = settings[settingOf(need)];
  if (setting.value === undefined) return null;
  if (setting.area) return reference(setting.area, sheet);
  return setting.value === "mm" ? '"mm"' : String(setting.value);
}

/**
 * The live formula of a measure for a cell on `sheet`: blanks in the range are never zeros.
 *
 * @param areas The area of each can, in the shape of the readings, where the figures are by area
 */
export function formulaOf(
  measure: Measure,
  readings: Area,
  settings: Settings,
  sheet: string,
  areas: Area | null = null,
): Formula {
  const range = reference(readings, sheet);
  const given = measure.needs.map((need) => argument(need, settings, sheet));
  const lacking = measure.needs.filter((_, index) => given[index] === null).map(settingOf);
  if (lacking.length > 0) return { lacking: lackOf(measure.label, lacking, settings) };
  const rest =
    areas && measure.beforeAreas
      ? [
          ...given.map((text) => (text === "" ? '"can"' : text)),
          ...(measure.rest ?? []),
          ...measure.beforeAreas,
          reference(areas, sheet),
        ]
      : [...given, ...(measure.rest ?? [])].filter((text) => text !== "");
  const text = `=CANFALL.${measure.id}(${[`IF(${range}="","x",${range})`, ...rest].join(",")})`;
  return { text, ...(measure.size?.(boxOf(readings)) ?? { rows: 1, columns: 1 }) };
}
