import type { Entries } from "./build";
import { dayOf } from "./day-number";
import { DEMAND_EXAMPLE } from "./demand-example";
import { PROGRAM_EXAMPLE } from "./program-example";
import { REGISTER_EXAMPLE } from "./register-example";

const NURSERY: Entries = {
  Nursery_Name: "Example Nursery (invented)",
  Plan_By: "nobody, an invented plan",
  Plan_Date: dayOf("2026-11-25"),
  Plan_Remark: "An invented example: no such nursery exists. Type over it, or start from the empty plan.",
  Latitude_deg: -27.5,
  Elevation_m: 60,
};

/** What is typed into the example plan: an invented nursery that says so. */
export const NURSERY_EXAMPLE: Entries = { ...NURSERY, ...DEMAND_EXAMPLE, ...REGISTER_EXAMPLE, ...PROGRAM_EXAMPLE };
