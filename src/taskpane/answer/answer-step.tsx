import { Button } from "@fluentui/react-components";
import { useMemo } from "react";
import type { Snapshot } from "../../hosts/snapshot";
import { answerFacts } from "../../workbook/answer/answer-facts";
import { answerSentence } from "../../workbook/answer/answer-sentence";
import { useBedReading } from "../map/bed/use-bed-reading";
import { CauseSection } from "../map/cause-section";
import { MapPicture } from "../map/picture/map-picture";
import { SelectedMap } from "../map/selected-map";
import { useMap } from "../map/use-map";
import { WholeBedSection } from "../map/whole-bed-section";
import { NoAudit } from "../new-audit/no-audit";
import { CellLink } from "../parts/cell-link";
import { Failure } from "../parts/task/failure";
import { DataChecks } from "../readings/data-checks";
import { SPEAKING_CHECKS } from "../readings/read-checks";
import { ShownReadings } from "../readings/shown-readings";
import { FiguresTable } from "../results/figures-table";
import { InsertFunction } from "../results/insert-function";
import { MeasureTable } from "../results/measure-table";
import { PlannedRun } from "../run-time/planned-run";
import type { StepProps } from "../step";
import { cellsOf, namedCells } from "../workbook/named";
import type { Reading } from "../workbook/reading";
import { areCans } from "../workbook/use-stated";
import { useWatched } from "../workbook/use-watched";
import { auditByFit } from "./audit";
import { ACTION_NAMES, firstActions, freeActionLine } from "./first-actions";
import { canCellOf, KEEPING_NAMES } from "./keep-answer";
import { NeededList } from "./needed-list";
import { SettingBox } from "./setting-box";
import { STILL_NEEDED } from "./still-needed";
import { useKeptAnswer } from "./use-kept-answer";
import { ZeroQuestion } from "./zero-question";

const CELLS: Reading<Snapshot> = {
  wants: {
    names: [...KEEPING_NAMES, ...ACTION_NAMES, "Multiplier_Basis", "Valve_Untested", ...SPEAKING_CHECKS.wants.names!],
  },
  read: (snapshot) => snapshot,
};

/** How long, why, what first; everything else is folded. */
export function AnswerStep({ host, answer, readings, keep }: StepProps) {
  const { found: needed, failure } = useWatched(host, STILL_NEEDED);
  const { found: snapshot } = useWatched(host, CELLS);
  const map = useMap(host, "audit", answer, null);
  const { reading, settled, stop } = useBedReading(map.ask);
  const verdict = reading.cause?.verdict;
  const cans = snapshot?.named("Cans_Readings")?.area;
  const named = useMemo(
    () => snapshot && namedCells(snapshot, ["Cans_Readings", "Multiplier_Basis", "Valve_Untested"]),
    [snapshot],
  );
  const own = areCans(named, answer?.area);
  const whole = own && reading.interval?.kind === "interval" ? reading.interval.whole : undefined;
  const audit = useMemo(() => auditByFit(answer?.audit ?? null, whole), [answer?.audit, whole]);
  useKeptAnswer(host, snapshot, { ready: settled && answer !== null, verdict, whole });
  const facts = useMemo(() => {
    if (!snapshot || !own) return null;
    const found = answerFacts(cellsOf(snapshot), audit?.rows ?? [], verdict, canCellOf(snapshot));
    return audit || found.cans > 0 ? { ...found, looking: !settled } : null;
  }, [snapshot, audit, own, verdict, settled]);
  const actions = useMemo(
    () => (snapshot && facts ? firstActions(snapshot, facts, verdict, SPEAKING_CHECKS.read(snapshot)) : []),
    [snapshot, facts, verdict],
  );

  return (
    <>
      <section aria-labelledby="canfall-answer">
        <h2 id="canfall-answer">Answer</h2>
        <Failure words={failure} />
        <NoAudit host={host} keep={keep} />
        {facts && (
          <p role="status" className="answer">
            {answerSentence(facts)}
          </p>
        )}
        {needed && <NeededList host={host} needed={needed} />}
        {facts?.zero && cans && (
          <ZeroQuestion
            {...{ host, keep, zero: facts.zero, sheet: cans.sheet }}
            basis={named?.Multiplier_Basis}
            freeAction={freeActionLine(snapshot!)}
          />
        )}
        {!facts && audit && cans && (
          <p className="note">
            These are the selected cells.{" "}
            <Button size="small" onClick={() => host.select(cans, true)}>
              Back to the cans of this audit
            </Button>
          </p>
        )}
        {facts && own && (
          <MapPicture {...{ host, answer, keep, id: "canfall-answer-map", way: "audit", map, reading }} />
        )}
        {facts && map.problem && <p className="note">{map.problem}</p>}
        {audit && <FiguresTable rows={audit.rows} />}
        {facts?.setting && audit && (
          <SettingBox
            {...facts}
            setting={facts.setting}
            audit={audit}
            basis={named?.Multiplier_Basis}
            untested={named?.Valve_Untested}
          />
        )}
        {actions.length > 0 && (
          <>
            <h3>What first</h3>
            <ol>
              {actions.map(({ words, cell }) => (
                <li key={words}>
                  {words} <CellLink host={host} cell={cell} />
                </li>
              ))}
            </ol>
          </>
        )}
      </section>
      {facts && map.seen && (
        <details>
          <summary>What is seen, and the cause</summary>
          <p className="seen">{map.seen.sentence}</p>
          {verdict && (
            <p className="seen">
              {verdict.sentence} Next: {verdict.next}.
            </p>
          )}
          <CauseSection id="canfall-answer" reading={reading} lack={map.facts?.bed?.lack ?? ""} />
          <WholeBedSection id="canfall-answer" reading={reading} stop={stop} reported={map.facts?.reported ?? {}} />
        </details>
      )}
      <details>
        <summary>Readings and run times</summary>
        <ShownReadings answer={answer} host={host} />
        <DataChecks host={host} />
      </details>
      <details>
        <summary>All figures, intervals and where the limits come from</summary>
        {audit && <MeasureTable audit={audit} />}
      </details>
      <details>
        <summary>What the run time is calculated from</summary>
        <PlannedRun host={host} keep={keep} />
      </details>
      <details>
        <summary>Map of other cells</summary>
        <SelectedMap {...{ host, answer, keep }} />
      </details>
      <details>
        <summary>Insert a live function</summary>
        <InsertFunction
          host={host}
          selected={answer?.selected ?? null}
          readings={readings}
          settings={answer?.settings ?? null}
          keep={keep}
        />
      </details>
    </>
  );
}
