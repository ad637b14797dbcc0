import { Button } from "@fluentui/react-components";
import type { Host } from "../../hosts/host";
import { TEST_CAUTIONS } from "../../workbook/cautions";
import { NoAudit } from "../new-audit/no-audit";
import { Cautions } from "../parts/cautions";
import { Failure } from "../parts/task/failure";
import { CountTable } from "../results/measure-table";
import type { StepProps } from "../step";
import type { Act } from "../workbook/act";
import type { NamedCells } from "../workbook/named";
import { useNamed } from "../workbook/use-named";
import { DataChecks } from "./data-checks";
import { Histogram } from "./histogram";
import { PasteReadings } from "./paste-readings";
import { ShownReadings } from "./shown-readings";
import { TestSettings } from "./test-settings";

const NAMES = ["Cans_Readings", "Readings_Problem"] as const;

/** What the workbook finds wrong with its own readings, and the way to them. */
function AuditReadings({ host, found, keep }: { host: Host; found: NamedCells; keep: (act: Act) => void }) {
  if (!found.Cans_Readings) return null;
  const { area } = found.Cans_Readings;
  return (
    <>
      <DataChecks host={host} />
      <Button onClick={() => host.select(area, true)}>Select the readings</Button>
      {found.Readings_Problem && <PasteReadings host={host} area={area} keep={keep} />}
    </>
  );
}

/** The readings: what was typed, what is wrong with it, and the settings of the test. */
export function ReadingsStep({ host, answer, entries, change, keep }: StepProps) {
  const { found, failure } = useNamed(host, NAMES);
  const audit = answer?.audit;
  const settings = (
    <TestSettings
      entries={entries}
      settings={answer?.settings ?? null}
      sheet={answer?.selected.sheet ?? ""}
      change={change}
    />
  );
  return (
    <>
      <section aria-labelledby="canfall-readings">
        <h2 id="canfall-readings">Readings</h2>
        <Failure words={failure} />
        <NoAudit host={host} keep={keep} />
        <ShownReadings answer={answer} host={host} />
        {found?.Cans_Readings && !audit && <Cautions title="Before you test" of={TEST_CAUTIONS} />}
        {found && <AuditReadings host={host} found={found} keep={keep} />}
        {audit && (
          <>
            <CountTable catches={audit.catches} />
            <Histogram classes={audit.classes} mean={audit.mean} unit={audit.unit} />
          </>
        )}
      </section>
      {found?.Readings_Problem ? (
        <details>
          <summary>Test settings for other cells than the sheet Cans</summary>
          {settings}
        </details>
      ) : (
        settings
      )}
    </>
  );
}
