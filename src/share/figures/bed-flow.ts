import type { AuditInputs } from "./audit-inputs";

const LITRES_AN_HOUR_OF_1_ML_A_SECOND = 3.6;

/** Mean flow of the heads timed with a bucket times the heads of the bed [L/h]; null where either is missing. */
export function bedFlow(inputs: AuditInputs): number | null {
  const seconds = inputs.numbers("Bucket_s");
  const flows = [...inputs.numbers("Bucket_mL")].flatMap(([place, caught]) => {
    const time = seconds.get(place);
    return time === undefined || !(time > 0) ? [] : [(caught / time) * LITRES_AN_HOUR_OF_1_ML_A_SECOND];
  });
  const heads = inputs.number("Head_Count");
  if (flows.length === 0 || heads === null) return null;
  return (flows.reduce((sum, flow) => sum + flow, 0) / flows.length) * heads;
}
