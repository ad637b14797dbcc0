import { MEASURES } from "../../../core/figures/measures";
import type { CanIndices } from "../../../core/layout/cans/indices";
import type { CanPlanError } from "../../../core/layout/cans/plan-error";
import { DRY_SPOTS } from "../../../core/layout/judgement";
import { figure } from "../../parts/figure";

const { MAR, CU, DU } = MEASURES;

function rateWords(read: number, real: number): string {
  const off = Math.round(100 * (read / real - 1));
  if (off === 0) return `${MAR.short} right to 1 %`;
  return `${MAR.short} ${Math.abs(off)} % ${off < 0 ? "low" : "high"}`;
}

function coefficientWords(read: CanIndices, bed: CanIndices): string {
  const [one, other] = [read.driestCoefficient, bed.driestCoefficient];
  const of = (value: number | typeof DRY_SPOTS) => (value === DRY_SPOTS ? "dry spots" : `SC ${figure(value)}`);
  const real = other === DRY_SPOTS ? "has dry spots" : `has ${figure(other)}`;
  return `${of(one)} (the bed ${real})`;
}

const points = (read: number, real: number) => {
  const off = Math.round(read - real);
  const size = Math.abs(off);
  return off === 0 ? "right" : `${size} ${size === 1 ? "point" : "points"} ${off < 0 ? "low" : "high"}`;
};

function readWords(read: CanIndices, bed: CanIndices): string {
  return `${coefficientWords(read, bed)}, ${rateWords(read.meanRate, bed.meanRate)}, ${CU.short} ${points(read.christiansen, bed.christiansen)}, ${DU.short} ${points(read.distribution, bed.distribution)}`;
}

/** What a plan of cans would read of the layout, by area as an audit with places does. */
export const canWords = ({ bed, weighted }: CanPlanError): string =>
  `By area, these cans would give ${readWords(weighted, bed)}.`;
