import { Button, Field, ProgressBar } from "@fluentui/react-components";
import { useState } from "react";
import { clock } from "../../core/program/clock";
import type { Program } from "../../core/program/program";
import type { Month } from "../../core/program/twelve-months";
import type { Host } from "../../hosts/host";
import { MONTHS } from "../../workbook/nursery/months";
import { programOf } from "../../workbook/nursery/program/entries";
import type { ProgramSheet } from "../../workbook/nursery/program/stated-program";
import { Failure } from "../parts/task/failure";
import { readNow } from "../workbook/reading";
import { shortWords } from "./night-words";
import { PROGRAM_SHEET } from "./program-sheet";
import { Stale, same } from "./stale";
import { useRun } from "./use-run";

/** Each month's program, or why there is none. */
function programs(sheet: ProgramSheet): (Program | string)[] {
  return MONTHS.map((_, index) => {
    const { program, wrong, missing } = programOf(sheet, index + 1);
    if (missing.length > 0 || !program)
      return [...wrong, ...missing.map((each) => `needs ${each}`)].join("; ") || "needs blocks";
    return program;
  });
}

const verdict = ({ night, problem }: Month) => (night ? (night.fits ? "✓ fits" : "✗ does not fit") : problem!);

function detail({ night, month }: Month, asked: readonly (Program | string)[]): string {
  const program = asked[month - 1];
  if (!night || typeof program !== "object") return "";
  return night.fits ? `finished at ${clock(Math.ceil(night.finish))}` : shortWords(program, night).join("; ");
}

/** All months at once: which fit, and by how much the others do not. */
export function MonthsSection({ host, id, sheet }: { host: Host; id: string; sheet: ProgramSheet | null }) {
  const [months, setMonths] = useState<Month[]>([]);
  const [asked, setAsked] = useState<(Program | string)[]>([]);
  const { running, problem, start, stop } = useRun();
  const [failure, setFailure] = useState("");

  async function run(): Promise<void> {
    setMonths([]);
    setFailure("");
    try {
      await host.settled();
      const now = programs((await readNow(host, PROGRAM_SHEET))!);
      setAsked(now);
      await start({ kind: "months", programs: now }, (said) => {
        if (said.kind === "month") setMonths((before) => [...before, said.month]);
      });
    } catch (reason) {
      setFailure(String(reason));
    }
  }

  const stale = months.length > 0 && sheet !== null && !same(asked, programs(sheet));
  return (
    <section aria-labelledby={`${id}-months`}>
      <h3 id={`${id}-months`}>Twelve months</h3>
      <p className="note">Fits the night of every month with its own depths, and leaves the sheet as it is.</p>
      <div className="actions">
        <Button disabledFocusable={running !== ""} onClick={run}>
          Fit all months
        </Button>
        {running && <Button onClick={stop}>Stop</Button>}
      </div>
      {running && (
        <Field label={`${months.length} of 12 months`}>
          <ProgressBar value={months.length / 12} />
        </Field>
      )}
      <Failure words={problem || failure} />
      {stale && <Stale again="fit all months again." />}
      {months.length > 0 && (
        <table>
          <caption>Whether the night of each month fits</caption>
          <thead>
            <tr>
              <th scope="col">Month</th>
              <th scope="col" className="right">
                Night
              </th>
            </tr>
          </thead>
          <tbody>
            {months.map((month) => (
              <tr key={month.month}>
                <th scope="row">{MONTHS[month.month - 1]}</th>
                <td className="right">
                  {verdict(month)}
                  <span className="detail">{stale ? "before the change" : detail(month, asked)}</span>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}
