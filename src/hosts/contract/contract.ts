import type { Host } from "../host";
import { FILE_CHECKS } from "./files";
import { FORMULA_CHECKS } from "./formulas";
import { PICTURE_CHECKS } from "./pictures";
import { PLACE_CHECKS } from "./places";
import { SNAPSHOT_CHECKS } from "./snapshots";
import { onTrialSheet, type TrialSheet } from "./trial-sheet";
import { VALUE_CHECKS } from "./values";

export const SCRATCH_SHEET = "Canfall self-test";

export interface Check {
  name: string;
  check(host: Host): Promise<void>;
}

/** What every host must do; each check works on a sheet that it adds and removes. */
export const contract: Check[] = Object.entries({
  ...VALUE_CHECKS,
  ...FORMULA_CHECKS,
  ...PLACE_CHECKS,
  ...SNAPSHOT_CHECKS,
  ...FILE_CHECKS,
  ...PICTURE_CHECKS,
}).map(([name, work]: [string, (trial: TrialSheet) => Promise<void>]) => ({
  name,
  check: (host) => onTrialSheet(host, SCRATCH_SHEET, work),
}));

/** Runs every check; a result without an error passed. */
export async function runContract(
  host: Host,
  progress: (done: number, of: number) => void = () => {},
): Promise<{ name: string; error?: string }[]> {
  const results: { name: string; error?: string }[] = [];
  for (const { name, check } of contract) {
    progress(results.length, contract.length);
    try {
      await check(host);
      results.push({ name });
    } catch (error) {
      results.push({ name, error: error instanceof Error ? error.message : String(error) });
    }
  }
  return results;
}
