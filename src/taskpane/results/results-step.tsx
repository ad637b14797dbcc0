import { DataChecks } from "../readings/data-checks";
import { ShownReadings } from "../readings/shown-readings";
import type { StepProps } from "../step";
import { InsertFunction } from "./insert-function";
import { MeasureTable } from "./measure-table";
import { StatedResults } from "./stated-results";

/** The measures of the readings, what the workbook states, and the functions that give more. */
export function ResultsStep({ host, answer, readings, keep }: StepProps) {
  return (
    <>
      <section aria-labelledby="canfall-results">
        <h2 id="canfall-results">Results</h2>
        <ShownReadings answer={answer} host={host} />
        <DataChecks host={host} />
        {answer?.audit && <MeasureTable audit={answer.audit} />}
      </section>
      <StatedResults host={host} />
      <InsertFunction
        host={host}
        selected={answer?.selected ?? null}
        readings={readings}
        settings={answer?.settings ?? null}
        keep={keep}
      />
    </>
  );
}
