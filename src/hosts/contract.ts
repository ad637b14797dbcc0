import { FILE_CHECKS } from "./contract-files";
import { FORMULA_CHECKS } from "./contract-formulas";
import { PICTURE_CHECKS } from "./contract-pictures";
import { PLACE_CHECKS } from "./contract-places";
import { VALUE_CHECKS } from "./contract-values";
import type { Host } from "./host";
import { onScratch, type Scratch } from "./scratch";

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
  ...FILE_CHECKS,
  ...PICTURE_CHECKS,
}).map(([name, work]: [string, (scratch: Scratch) => Promise<void>]) => ({
  name,
  check: (host) => onScratch(host, SCRATCH_SHEET, work),
}));

/** Runs every check; a result without an error passed. */
export async function runContract(host: Host): Promise<{ name: string; error?: string }[]> {
  const results: { name: string; error?: string }[] = [];
  for (const { name, check } of contract) {
    try {
      await check(host);
      results.push({ name });
    } catch (error) {
      results.push({ name, error: error instanceof Error ? error.message : String(error) });
    }
  }
  return results;
}
