import type { Input } from "../../src/cells/cell";
import { memoryHost } from "../support/memory-host";

export const at = (address: string, sheet = "Example") => ({ sheet, address });

/** Four catches [mm] in B2:B5, one cell marked x and one blank below them; the test's settings in F2:F4. */
export function bedHost(changed: Record<string, Input> = {}) {
  const cells = { B1: "Catch", B2: 8, B3: 10, B4: 12, B5: 10, B6: "x", F2: 30, F3: "mm", F4: 6, ...changed };
  return memoryHost(
    { Example: cells, Report: {} },
    {
      Cans_Readings: at("B2:B7"),
      Test_Minutes: at("F2"),
      Can_Mouth_mm: at("F3"),
      Net_Depth_mm: at("F4"),
    },
  );
}
