import { Button } from "@fluentui/react-components";
import { reference } from "../../cells/box";
import type { Host } from "../../hosts/host";
import type { Answer } from "../answer/answer";
import type { Audit, RunTime } from "../answer/audit";
import type { Settings } from "../answer/settings";
import { figure } from "../parts/figure";
import { useStatedRunTime } from "../workbook/use-stated";

const BASES = { can: "the driest can", quarter: "the low quarter", share: "the share of cans" };

function Time({ time, settings }: { time: RunTime; settings: Settings }) {
  if ("reason" in time) return <>{time.reason}.</>;
  return (
    <>
      Needs <strong>{figure(time.minutes)} min</strong> for {figure(settings.depth.value!)} mm
    </>
  );
}

function Driest({ audit, settings, stated }: { audit: Audit; settings: Settings; stated: number | undefined }) {
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
      {stated !== undefined && (
        <p>
          To set: <strong>{figure(stated)} min</strong>, as the workbook works it out (step Run time)
        </p>
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
