import { dayOf } from "../../../cells/day-number";
import type { Entries } from "../../form/build";
import { DEMAND_EXAMPLE } from "./demand";
import { PROGRAM_EXAMPLE } from "./program";
import { REGISTER_EXAMPLE } from "./register";

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
