import { type ComponentType, lazy } from "react";
import { NewAudit } from "./new-audit/new-audit";
import { ReadingsStep } from "./readings/readings-step";
import { ResultsStep } from "./results/results-step";
import { RunTimeStep } from "./run-time/run-time-step";
import type { StepProps } from "./step";

export interface Step {
  id: string;
  title: string;
  Part: ComponentType<StepProps>;
}

const MapStep = lazy(async () => ({ default: (await import("./map/map-step")).MapStep }));
const PlanStep = lazy(async () => ({ default: (await import("./plan/plan-step")).PlanStep }));
const CostStep = lazy(async () => ({ default: (await import("./cost/cost-step")).CostStep }));
const ShareStep = lazy(async () => ({ default: (await import("./share/share-step")).ShareStep }));
const DemandStep = lazy(async () => ({ default: (await import("./demand/demand-step")).DemandStep }));
const NightStep = lazy(async () => ({ default: (await import("./night/night-step")).NightStep }));
const RegisterStep = lazy(async () => ({ default: (await import("./register/register-step")).RegisterStep }));
const HelpStep = lazy(async () => ({ default: (await import("./help/help-step")).HelpStep }));

/** The steps in the order of the job; a step is one line. */
export const STEPS: readonly Step[] = [
  { id: "new", title: "New audit", Part: NewAudit },
  { id: "readings", title: "Readings", Part: ReadingsStep },
  { id: "map", title: "Map", Part: MapStep },
  { id: "results", title: "Results", Part: ResultsStep },
  { id: "time", title: "Run time", Part: RunTimeStep },
  { id: "plan", title: "Plan a layout", Part: PlanStep },
  { id: "cost", title: "Cost", Part: CostStep },
  { id: "share", title: "Share", Part: ShareStep },
  { id: "demand", title: "Demand", Part: DemandStep },
  { id: "night", title: "Night", Part: NightStep },
  { id: "register", title: "Register", Part: RegisterStep },
  { id: "help", title: "Functions", Part: HelpStep },
];
