/** What can hurt someone, in one text for the sheets, the pane and the paper. */
export const CAUTION = {
  RECYCLED: "Recycled water: spray carries germs such as Legionella. Stay out of it, wear gloves when you handle cans.",
  INJECTION: "Never test while fertiliser or chemicals are injected; injection needs backflow prevention.",
  PUMPS: "Pumps and their wiring are a licensed electrician's work. Keep hands off fittings under pressure.",
  GROUND: "Wet ground, risers and cans trip people.",
  UNATTENDED:
    "Pumps run unattended at these times: keep the protection against running dry and against closed valves on, and keep people out of the spray.",
  DECISION: "Results are decision support, not a design certificate; local codes and licensed people come first.",
} as const;

/** Where a test is made. */
export const TEST_CAUTIONS = [CAUTION.RECYCLED, CAUTION.INJECTION, CAUTION.PUMPS, CAUTION.GROUND] as const;
/** Where watering is left to the controller. */
export const SCHEDULE_CAUTIONS = [CAUTION.UNATTENDED, CAUTION.RECYCLED, CAUTION.INJECTION, CAUTION.PUMPS] as const;
/** Where heads and pipes are planned. */
export const LAYOUT_CAUTIONS = [CAUTION.DECISION, CAUTION.PUMPS, CAUTION.INJECTION] as const;
