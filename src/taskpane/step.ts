import type { Area } from "../cells/area";
import type { Host } from "../hosts/host";
import type { Answer } from "./answer/answer";
import type { Entries } from "./answer/entries";
import type { FunctionInfo } from "./help/function-info";
import type { Act } from "./workbook/act";

/** What every step of the pane is given. */
export interface StepProps {
  host: Host;
  /** The audit of the selected readings, and what is selected. */
  answer: Answer | null;
  /** The last selected range that held readings. */
  readings: Area | null;
  /** The test settings as typed. */
  entries: Entries;
  change: (changed: Partial<Entries>) => void;
  /** Remembers something that was done to the workbook, so that Undo takes it back. */
  keep: (act: Act) => void;
  /** The list from functions.json, fetched where left out. */
  functions?: FunctionInfo[] | undefined;
  /** Files that the page around the pane hands over to be checked. */
  handed?: readonly File[] | undefined;
}
