import { Button, Field, ProgressBar } from "@fluentui/react-components";
import { useId, useRef, useState } from "react";
import { clock } from "../../core/program/clock";
import { EFFORT, type Night } from "../../core/program/fit-night";
import { SCHEDULE_CAUTIONS } from "../../workbook/cautions";
import { MONTHS } from "../../workbook/nursery/months";
import type { StatedProgram } from "../../workbook/nursery/program/entries";
import { NurseryPlan } from "../new-audit/nursery-plan";
import { Cautions } from "../parts/cautions";
import { Failure } from "../parts/task/failure";
import type { StepProps } from "../step";
import { readNow } from "../workbook/reading";
import { useWatched } from "../workbook/use-watched";
import { CheckSection } from "./check-section";
import { MonthsSection } from "./months-section";
import { type Fitted, NightResult } from "./night-result";
import { lackWords } from "./night-words";
import { same } from "./stale";
import { STATED_NIGHT } from "./stated-night";
import { useRun } from "./use-run";

/** Start times of a night for the blocks that share a pump. */
export function NightStep({ host, keep }: StepProps) {
  const id = useId();
  const { found, failure } = useWatched(host, STATED_NIGHT);
  const stated = found?.stated;
  const [fitted, setFitted] = useState<Fitted | null>(null);
  const [sofar, setSofar] = useState<Night | null>(null);
  const best = useRef<Night | null>(null);
  const { running, problem, start, stop } = useRun();

  async function fit(): Promise<void> {
    await host.settled();
    const { stated: now } = await readNow(host, STATED_NIGHT);
    if (!now?.program) return;
    const { program, month } = now;
    best.current = null;
    setSofar(null);
    setFitted(null);
    const whole = await start({ kind: "fit", program }, (said) => {
      if (said.kind !== "night") return;
      best.current = said.night;
      setSofar(said.night);
    });
    if (best.current) setFitted({ program, month, lack: lackWords(now), night: best.current, stopped: !whole });
  }

  if (stated === null) {
    return (
      <section aria-labelledby={`${id}-night`}>
        <h2 id={`${id}-night`}>Schedule</h2>
        <NurseryPlan host={host} keep={keep} />
      </section>
    );
  }
  const stale =
    fitted !== null &&
    !same([stated?.program, stated?.month, stated && lackWords(stated)], [fitted.program, fitted.month, fitted.lack]);
  return (
    <section aria-labelledby={`${id}-night`}>
      <h2 id={`${id}-night`}>Schedule</h2>
      <p>Start times for the blocks of the sheet Program, the last one ending as early as it can be found.</p>
      <Failure words={failure} />
      {stated && <Stated stated={stated} />}
      <div className="actions">
        <Button appearance="primary" disabledFocusable={!stated?.program || running !== ""} onClick={fit}>
          Fit the night
        </Button>
        {running && <Button onClick={stop}>Stop</Button>}
      </div>
      {running && (
        <Field
          label={
            sofar ? `Best so far finishes at ${clock(Math.ceil(sofar.finish))}; still looking` : "Looking for an order"
          }
        >
          <ProgressBar value={Math.min(1, (sofar?.placed ?? 0) / EFFORT)} />
        </Field>
      )}
      <Failure words={problem} />
      <Cautions of={SCHEDULE_CAUTIONS} />
      {fitted && <NightResult {...{ host, keep, fitted, id, stale }} />}
      {stated && <MonthsSection host={host} id={id} sheet={found.sheet} />}
      {stated && <CheckSection host={host} id={id} now={found} />}
    </section>
  );
}

/** What the sheets state, what is wrong and what is missing. */
function Stated({ stated: { program, month, wrong, missing } }: { stated: StatedProgram }) {
  return (
    <>
      {program && (
        <p className="where">
          {month ? MONTHS[month - 1] : "No month"}: {program.blocks.length}{" "}
          {program.blocks.length === 1 ? "block" : "blocks"}, pump {Math.round(program.pump / 6) / 10} L/min,{" "}
          {program.windows.map(({ start, end }) => `${clock(start)}–${clock(end)}`).join(" and ")}
        </p>
      )}
      {wrong.length > 0 && (
        <ul role="alert" className="problem">
          {wrong.map((each) => (
            <li key={each}>{each}</li>
          ))}
        </ul>
      )}
      {missing.length > 0 && (
        <>
          <p className="note">{program ? "Left out of the night until filled in:" : "Still needed:"}</p>
          <ul>
            {missing.map((each) => (
              <li key={each}>needs {each}</li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}
