import type { Stated } from "../../cells/stated";
import { potGroups } from "../../core/application/pot-groups";
import { reachedShare } from "../../core/application/reached-share";
import { runTime } from "../../core/application/run-time";
import { potDepth } from "../../core/demand/pot-depth";
import { type AuditInputs, ifAll } from "./audit-inputs";

/** A group of pots as it was typed; null where something is missing. */
export interface TypedGroup {
  /** From 1. */
  number: number;
  depth: number | null;
  area: number | null;
  reached: number | null;
}

const COLUMNS = ["Tops_mm", "Spacings_mm", "Uses_mL", "Captures", "Depths_mm", "Areas"] as const;

const topArea = (inputs: AuditInputs, top: number | null) =>
  top !== null && top > 0 ? (inputs.text("Pot_Shape") === "square" ? top ** 2 : (Math.PI * top ** 2) / 4) : null;

/** Net depth of a pot from the water that it uses. */
export function depthOfPot(inputs: AuditInputs, top: number | null, use: number | null, capture: number | null) {
  return ifAll([topArea(inputs, top), use], (area, volume) =>
    volume > 0 ? potDepth(volume, 2 * Math.sqrt(area / Math.PI), capture ?? 1) : null,
  );
}

/** Share of the water that reaches pots. */
const shareReached = (
  inputs: AuditInputs,
  top: number | null,
  spacing: number | null,
  capture: number | null,
): number | null =>
  ifAll([topArea(inputs, top), spacing], (area, between) => reachedShare(area, between, capture ?? 1));

/** The groups that are filled in on the sheet Pots. */
export function typedGroups(inputs: AuditInputs): TypedGroup[] {
  const typed = COLUMNS.map((name) => inputs.cells(`Groups_${name}`));
  return [1, 2, 3, 4].flatMap((number): TypedGroup[] => {
    const cells = typed.map((column) => column.find(({ row }) => row === number)?.cell.value ?? null);
    if (cells.every((value) => value === null || value === "")) return [];
    const [top, spacing, use, capture, depth, area] = cells.map((value) =>
      typeof value === "number" ? value : null,
    ) as [number | null, number | null, number | null, number | null, number | null, number | null];
    const own = depth === null ? depthOfPot(inputs, top, use, capture) : depth > 0 ? depth : null;
    const reached = shareReached(inputs, top, spacing, capture);
    return [{ number, depth: own, area: area !== null && area > 0 ? area : null, reached }];
  });
}

type Known = TypedGroup & { depth: number; area: number };

/** The groups where each has its depth and its area; null where one lacks something. */
function known(groups: readonly TypedGroup[]): readonly Known[] | null {
  const all = groups.filter((group): group is Known => group.depth !== null && group.area !== null);
  return all.length === groups.length ? all : null;
}

/** Net depth of the neediest group; null where a group lacks something. */
export function neediestDepth(groups: readonly TypedGroup[]): number | null {
  const all = known(groups);
  return all && Math.max(...all.map(({ depth }) => depth));
}

/** What several groups get at a multiplier, all of them together; null where it cannot be given. */
export function groupsWater(
  groups: readonly TypedGroup[],
  multiplier: number | null,
  readings: readonly number[],
  areas?: readonly number[],
) {
  const all = known(groups);
  if (!all || multiplier === null) return null;
  const reach = all.every(({ reached }) => reached !== null);
  const asked = all.map(({ depth, area, reached }) => ({ depth, area, ...(reach && { reached: reached! }) }));
  return ifAll([multiplier], (k) => potGroups(asked, readings, k, areas));
}

/** What drains from several groups after a change, by what drains at a multiplier. */
export function groupsDrainedAfter(
  groups: readonly TypedGroup[],
  multiplier: number,
  drainedAt: (multiplier: number) => number,
): number | null {
  const all = known(groups);
  if (!all) return null;
  const deepest = Math.max(...all.map(({ depth }) => depth));
  const reach = all.every(({ reached }) => reached !== null);
  const weights = all.map(({ area, reached }) => area * (reach ? reached! : 1));
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  return all.reduce((sum, { depth }, g) => sum + (weights[g]! / whole) * drainedAt((multiplier * deepest) / depth), 0);
}

/** Share of the water on the bed that reaches pots, of one size or of several. */
export function reachedIn(inputs: AuditInputs, groups: readonly TypedGroup[]): number | null {
  if (groups.length === 0) {
    return shareReached(
      inputs,
      inputs.number("Pot_Top_mm"),
      inputs.number("Pot_Spacing_mm"),
      inputs.number("Capture_Factor"),
    );
  }
  const all = known(groups);
  if (!all || all.some(({ reached }) => reached === null)) return null;
  const whole = all.reduce((sum, { area }) => sum + area, 0);
  return all.reduce((sum, { area, reached }) => sum + (area / whole) * reached!, 0);
}

/** The figures of the sheet Pots, by the names of their cells. */
export function potFigures(
  inputs: AuditInputs,
  groups: readonly TypedGroup[],
  of: { mar: number | null; grossMultiplier: number | null; drained: number | null; bedWater: number | null },
  water: ReturnType<typeof groupsWater>,
): [string, Stated][] {
  const reached = reachedIn(inputs, groups);
  const between = ifAll([reached], (share) => 1 - share);
  const drained = ifAll([reached, of.drained], (share, part) => share * part);
  const kL = (share: number | null) => ifAll([of.bedWater, share], (whole, part) => whole * part);
  const kilograms = (water: number | null, content: string) =>
    ifAll([water, inputs.number(content)], (volume, grams) => (volume * grams) / 1000);
  const [betweenWater, drainedWater] = [kL(between), kL(drained)];
  return [
    ...groups.flatMap(({ number, depth }, index): [string, Stated][] => {
      const got = water?.groups[index];
      return [
        [`Group_${number}_Depth_mm`, depth],
        [`Group_${number}_Run_min`, ifAll([depth, of.mar, of.grossMultiplier], runTime)],
        ...(got
          ? ([
              [`Group_${number}_Share`, got.share],
              [`Group_${number}_Times`, got.multiplier],
              [`Group_${number}_Drained`, got.drained],
            ] as [string, Stated][])
          : []),
      ];
    }),
    ["Reached_Share", reached],
    ["Between_Pots_Share", between],
    ["Pots_Drained_Share", drained],
    ["Between_Pots_kL", betweenWater],
    ["Pots_Drained_kL", drainedWater],
    ["Between_Pots_Fertiliser_kg", kilograms(betweenWater, "Fertiliser_Water_mgL")],
    ["Pots_Drained_Fertiliser_kg", kilograms(drainedWater, "Fertiliser_mgL")],
  ];
}
