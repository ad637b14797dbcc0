import { Button } from "@fluentui/react-components";
import { useEffect } from "react";
import type { Night } from "../../core/program/fit-night";
import type { Program } from "../../core/program/program";
import { verifyNight } from "../../core/program/verify-night";
import type { Host } from "../../hosts/host";
import { MONTHS } from "../../workbook/nursery/months";
import { PAPER_LINES } from "../../workbook/nursery/start-times/places";
import { placeAtSelection } from "../map/picture/place-picture";
import { TableActions } from "../parts/files/table-actions";
import type { Question } from "../parts/task/question";
import { TaskLine } from "../parts/task/task-line";
import { useTask } from "../parts/task/use-task";
import { useDark } from "../parts/use-dark";
import type { Act } from "../workbook/act";
import { readNamed } from "../workbook/named";
import { NightChart } from "./night-chart";
import { fitWords, gapWords, markOf, shortWords, titleWords } from "./night-words";
import { picturePng } from "./picture-png";
import { RemediesSection } from "./remedies-section";
import { Stale } from "./stale";
import { StartTable } from "./start-table";
import { linesThere, startTimesRows, writeStartTimes } from "./start-times";
import { Verified } from "./verified";

const PICTURE = "Canfall night";
const WRITING = "Writing the start times";

/** A night that was fitted, and the program that it belongs to. */
export interface Fitted {
  program: Program;
  month: number | null;
  /** What the night goes without since the sheet lacks something, or "". */
  lack: string;
  night: Night;
  stopped: boolean;
}

/** What came of the fitting, and what to do with it. */
export function NightResult({
  host,
  keep,
  fitted,
  id,
  stale,
}: {
  host: Host;
  keep: (act: Act) => void;
  fitted: Fitted;
  id: string;
  /** Whether the Program is another now. */
  stale: boolean;
}) {
  const { program, month, lack, night, stopped } = fitted;
  const task = useTask();
  const { clear } = task;
  useEffect(() => {
    if (stale) clear();
  }, [stale, clear]);
  const keepSaid = (act: Act) => keep({ ...act, takeBack: () => act.takeBack().then(clear) });
  const dark = useDark();
  const broken = night.short.flow > 0 ? [] : verifyNight(program, night.schedule);
  const said = fitWords(program, night, lack);
  const short = shortWords(program, night).join("; ");
  const name = month ? `a ${MONTHS[month - 1]} night` : "a night";
  const words = `Start times of ${name}: ${program.blocks.length} blocks, ${night.schedule.length} pulses. ${said}`;

  async function put(): Promise<string> {
    keepSaid(await writeStartTimes(host, night.schedule));
    const parts = night.schedule.length > PAPER_LINES ? "; its further parts hold the other lines" : "";
    const but = [...(night.fits ? [] : [`the night does not fit: ${short}`]), ...(lack ? [lack] : [])].join("; ");
    return `${night.schedule.length} start times are in the sheet Start times${but && `, but ${but}`}. To print: open that sheet, print: page 1 in order of time, page 2 by block${parts}. Undo takes them out`;
  }
  async function overwrite(): Promise<string | Question> {
    const there = await linesThere(host);
    if (there === 0) return put();
    return {
      text: `The sheet Start times holds ${there === 1 ? "a line" : `${there} lines`}. Write over what is there? Undo brings it back.`,
      yes: "Write over it",
      no: "Keep it",
      doing: WRITING,
      act: put,
    };
  }
  const write = () =>
    task.attempt(WRITING, async (): Promise<string | Question> => {
      if (night.fits) return overwrite();
      return {
        text: `This night does not fit: ${short}. Write its start times all the same?`,
        yes: "Write them all the same",
        no: "Write nothing",
        doing: WRITING,
        act: overwrite,
      };
    });
  const place = () =>
    task.attempt("Placing the picture", async () => {
      const title = titleWords(program, month, await nurseryName(host));
      const png = await picturePng({ program, schedule: night.schedule, words, title });
      return placeAtSelection(host, keepSaid, { png, name: PICTURE, alternative: `${title}. ${words}` });
    });

  return (
    <section aria-labelledby={`${id}-result`}>
      <h3 id={`${id}-result`}>{month ? `The night of ${MONTHS[month - 1]}` : "The night"}</h3>
      {stale && <Stale again="fit the night again." />}
      <p className={stale ? "note" : "seen"} role="status">
        {!stale && <span aria-hidden="true">{markOf(night, lack)}</span>}
        {stale && "Before the change: "}
        {said}
      </p>
      {stopped && <p className="note">Stopped before the search was through: this is the best so far.</p>}
      <p>{gapWords(night)}</p>
      {night.schedule.length > 0 && (
        <>
          {!stale && <Verified broken={broken} fits={night.fits} whole={!lack} />}
          <div className="picture">
            <NightChart {...{ program, schedule: night.schedule, words, dark }} />
          </div>
          <div className="actions">
            <Button appearance="primary" disabledFocusable={stale} onClick={write}>
              Write the start times
            </Button>
            <Button disabledFocusable={stale} onClick={place}>
              Place the picture at the selected cell
            </Button>
            <TableActions
              {...{ host, task, keep: keepSaid, file: "start times.csv", sheet: "Start times to print" }}
              rows={() => startTimesRows(program, night.schedule)}
              disabled={stale}
            />
          </div>
          {stale && <Stale again="fit the night again to write, place or save it." />}
        </>
      )}
      <TaskLine task={task} />
      {night.schedule.length > 0 && <StartTable schedule={night.schedule} />}
      {!night.fits && !stale && <RemediesSection {...{ program, night, id }} />}
    </section>
  );
}

/** The nursery's name as it is typed; "" where there is none. */
async function nurseryName(host: Host): Promise<string> {
  const cell = (await readNamed(host, ["Nursery_Name"])).Nursery_Name?.value ?? null;
  return cell === null || typeof cell === "object" ? "" : String(cell).trim();
}
