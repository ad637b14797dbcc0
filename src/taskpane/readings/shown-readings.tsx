import { Button } from "@fluentui/react-components";
import { reference } from "../../cells/box";
import type { Host } from "../../hosts/host";
import type { Answer } from "../answer/answer";
import type { Audit, RunTime } from "../answer/audit";
import type { Settings } from "../answer/settings";
import { figure } from "../parts/figure";
import { type StatedRunTime, useStatedRunTime } from "../workbook/use-stated";

const BASES = { can: "the driest can", quarter: "the low quarter", share: "the share of cans" };

function Time({ time, settings }: { time: RunTime; settings: Settings }) {
  if ("reason" in time) return <>{time.reason}.</>;
  return (
    <>
      Needs <strong>{figure(time.minutes)} min</strong> for {figure(settings.depth.value!)} mm
    </>
  );
}

/** The run time that the workbook states; its own is not shown beside it in another way. */
function Stated({ audit, stated, depth }: { audit: Audit; stated: StatedRunTime; depth: number | undefined }) {
  const { driest, weighting } = audit;
  return (
    <p>
      {stated.valve !== undefined && (
        <>
          Set the valve to <strong>{figure(stated.valve)} min</strong>, the longest run of its tested beds. This bed
          alone:{" "}
        </>
      )}
      Run time <strong>{figure(stated.minutes)} min</strong> ({stated.basis}, {weighting}), as on the sheet Run time.
      {stated.basis !== "driest can" && "minutes" in driest && depth !== undefined && (
        <>
          {" "}
          The driest can has its {figure(depth)} mm after {figure(driest.minutes)} min.
        </>
      )}
    </p>
  );
}

function Computed({ audit, settings }: { audit: Audit; settings: Settings }) {
  const { driest, byBasis } = audit;
  return (
    <>
      <p>
        <Time time={driest} settings={settings} />
      </p>
      {byBasis && (
        <p>
          By {BASES[settings.basis]}
          {settings.basis === "share" && settings.share.value !== undefined && ` (${figure(settings.share.value)})`}:{" "}
          <Time time={byBasis} settings={settings} />
        </p>
      )}
    </>
  );
}

function Driest({ audit, settings, stated }: { audit: Audit; settings: Settings; stated: StatedRunTime | undefined }) {
  const { catches, unit } = audit;
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
      {stated ? (
        <Stated audit={audit} stated={stated} depth={settings.depth.value} />
      ) : (
        <Computed audit={audit} settings={settings} />
      )}
    </div>
  );
}

/** Which readings are shown, and the driest of them; or why there are none. */
export function ShownReadings({ answer, host }: { answer: Answer | null; host: Host }) {
  const audit = answer?.audit;
  const stated = useStatedRunTime(host, answer?.area);
  return (
    <>
      <div role="status">
        {answer && (
          <p className="where">
            {reference(answer.area)}
            {answer.part && ": only the selected part of the cans"}
          </p>
        )}
        {answer && audit && <Driest audit={audit} settings={answer.settings} stated={stated} />}
        {answer?.problem && (
          <p className="problem">
            {answer.problem}. Select the catches of one test; mark a can that was not read with x.
          </p>
        )}
      </div>
      {answer?.offer && (
        <Button appearance="primary" onClick={() => host.select(answer.offer!)}>
          Select the readings in {reference(answer.offer)}
        </Button>
      )}
    </>
  );
}
