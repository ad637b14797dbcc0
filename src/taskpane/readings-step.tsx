import { Button } from "@fluentui/react-components";
import type { Host } from "../hosts/host";
import { DataChecks } from "./data-checks";
import type { Done } from "./done";
import { Failure } from "./failure";
import { Histogram } from "./histogram";
import { CountTable } from "./measure-table";
import type { NamedCells } from "./named";
import { PasteReadings } from "./paste-readings";
import { ShownReadings } from "./shown-readings";
import type { StepProps } from "./step";
import { TestSettings } from "./test-settings";
import { useNamed } from "./use-named";

const NAMES = ["Cans_Readings", "Readings_Problem"] as const;

/** What the workbook finds wrong with its own readings, and the way to them. */
function AuditReadings({ host, found, keep }: { host: Host; found: NamedCells; keep: (done: Done) => void }) {
  if (!found.Cans_Readings) return null;
  const { area } = found.Cans_Readings;
  return (
    <>
      <DataChecks host={host} />
      <Button onClick={() => host.select(area)}>Select the readings</Button>
      {found.Readings_Problem && <PasteReadings host={host} area={area} keep={keep} />}
    </>
  );
}

/** The readings: what was typed, what is wrong with it, and the settings of the test. */
export function ReadingsStep({ host, answer, entries, change, keep }: StepProps) {
  const { found, failure } = useNamed(host, NAMES);
  const audit = answer?.audit;
  return (
    <>
      <section aria-labelledby="canfall-readings">
        <h2 id="canfall-readings">Readings</h2>
        <Failure words={failure} />
        <ShownReadings answer={answer} host={host} />
        {found && <AuditReadings host={host} found={found} keep={keep} />}
        {audit && (
          <>
            <CountTable catches={audit.catches} />
            <Histogram classes={audit.classes} mean={audit.mean} unit={audit.unit} />
          </>
        )}
      </section>
      <TestSettings
        entries={entries}
        settings={answer?.settings ?? null}
        sheet={answer?.selected.sheet ?? ""}
        change={change}
      />
    </>
  );
}
