import { type ComponentType, lazy } from "react";
import { AnswerStep } from "./answer/answer-step";
import { NewAudit } from "./new-audit/new-audit";
import { ReadingsStep } from "./readings/readings-step";
import type { StepProps } from "./step";

/** What a step is about: the block of the audit, the whole nursery, or the functions. */
export type Group = "block" | "nursery" | "help";

export interface Step {
  id: string;
  title: string;
  group: Group;
  /** Sheets that the step is about: it goes to the first, and from any of them nowhere. */
  sheets: readonly string[];
  Part: ComponentType<StepProps>;
}

/** A step that is loaded when it is opened; a second try where the first one fails. */
const later = (load: () => Promise<ComponentType<StepProps>>) => {
  const loaded = async () => ({ default: await load() });
  return lazy(() => loaded().catch(loaded));
};

const PlanStep = later(async () => (await import("./plan/plan-step")).PlanStep);
const CostStep = later(async () => (await import("./cost/cost-step")).CostStep);
const ShareStep = later(async () => (await import("./share/share-step")).ShareStep);
const DemandStep = later(async () => (await import("./demand/demand-step")).DemandStep);
const NightStep = later(async () => (await import("./night/night-step")).NightStep);
const RegisterStep = later(async () => (await import("./register/register-step")).RegisterStep);
const HelpStep = later(async () => (await import("./help/help-step")).HelpStep);

/** The groups that are chosen above the steps; functions and help have a button of their own. */
export const GROUPS: readonly { id: Group; title: string }[] = [
  { id: "block", title: "This block" },
  { id: "nursery", title: "Whole nursery" },
];

/** The steps in the order of the job; a step is one line. */
export const STEPS: readonly Step[] = [
  { id: "new", title: "Set up", group: "block", sheets: ["Block", "Start", "Pots", "Limits"], Part: NewAudit },
  { id: "readings", title: "Readings", group: "block", sheets: ["Cans", "Heads"], Part: ReadingsStep },
  {
    id: "answer",
    title: "Answer",
    group: "block",
    sheets: ["Results", "Run time", "Coverage", "Actions", "Report"],
    Part: AnswerStep,
  },
  { id: "plan", title: "Layout", group: "block", sheets: [], Part: PlanStep },
  { id: "cost", title: "Cost", group: "block", sheets: ["Cost", "Water and cost"], Part: CostStep },
  { id: "share", title: "Share", group: "block", sheets: ["Report"], Part: ShareStep },
  { id: "demand", title: "Demand", group: "nursery", sheets: ["Demand", "Weather", "Weighings"], Part: DemandStep },
  { id: "night", title: "Schedule", group: "nursery", sheets: ["Program", "Start times", "Demand"], Part: NightStep },
  { id: "register", title: "Register", group: "nursery", sheets: ["Register"], Part: RegisterStep },
  { id: "help", title: "Functions and help", group: "help", sheets: [], Part: HelpStep },
];

/** The step that is about a sheet before all others. */
export const stepOfSheet = (sheet: string): Step | undefined =>
  STEPS.filter(({ sheets }) => sheets.includes(sheet)).sort(
    (one, other) => one.sheets.indexOf(sheet) - other.sheets.indexOf(sheet),
  )[0];

export const groupOf = (id: string): Group => STEPS.find((step) => step.id === id)!.group;
