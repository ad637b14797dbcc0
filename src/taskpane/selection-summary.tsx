import { Button } from "@fluentui/react-components";
import type { Area } from "../hosts/host";
import { reference } from "./address";
import type { Answer } from "./answer";
import type { Audit, RunTime } from "./audit";
import { figure } from "./figure";
import { Histogram } from "./histogram";
import { MeasureTable } from "./measure-table";
import type { Settings } from "./settings";

const BASES = { can: "the driest can", quarter: "the low quarter", share: "the share of cans" };

function Time({ time, settings }: { time: RunTime; settings: Settings }) {
  if ("reason" in time) return <>{time.reason}.</>;
  return (
    <>
      Needs <strong>{figure(time.minutes)} min</strong> for {figure(settings.depth.value!)} mm
    </>
  );
}

function Driest({ audit, settings }: { audit: Audit; settings: Settings }) {
  const { catches, unit, byBasis } = audit;
  const others = catches.alike - 1;
  return (
    <div className="driest">
      <p>
        Driest can{" "}
        <strong>
          {figure(catches.driest)} {unit}
        </strong>{" "}
        in {catches.driestCell.address}
        {others > 0 && ` and ${others} more like it`}
      </p>
      <p>
        <Time time={audit.driest} settings={settings} />
      </p>
      {byBasis && (
        <p>
          By {BASES[settings.basis]}
          {settings.basis === "share" && settings.share.value !== undefined && ` (${figure(settings.share.value)})`}:{" "}
          <Time time={byBasis} settings={settings} />
        </p>
      )}
    </div>
  );
}

/** What stands in the range of readings that is shown. */
export function SelectionSummary({ answer, select }: { answer: Answer | null; select: (area: Area) => void }) {
  const audit = answer?.audit;
  return (
    <section aria-labelledby="canfall-selection">
      <h2 id="canfall-selection">Readings</h2>
      <div role="status">
        {answer && <p className="where">{reference(answer.area)}</p>}
        {answer && audit && <Driest audit={audit} settings={answer.settings} />}
        {answer?.problem && (
          <p className="problem">
            {answer.problem}. Select the catches of one test; mark a can that was not read with x.
          </p>
        )}
      </div>
      {answer?.offer && (
        <Button appearance="primary" onClick={() => select(answer.offer!)}>
          Select the readings in {reference(answer.offer)}
        </Button>
      )}
      {audit && (
        <>
          <MeasureTable audit={audit} />
          <Histogram classes={audit.classes} mean={audit.mean} unit={audit.unit} />
        </>
      )}
    </section>
  );
}
