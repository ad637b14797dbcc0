import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { verifyNight } from "../../core/program/verify-night";
import type { Host } from "../../hosts/host";
import { TaskLine } from "../parts/task/task-line";
import { useInSight } from "../parts/task/use-in-sight";
import { useTask } from "../parts/task/use-task";
import { readNow } from "../workbook/reading";
import { lackWords } from "./night-words";
import { Stale, same } from "./stale";
import { readStartTimes } from "./start-times";
import { STATED_NIGHT, type StatedNight } from "./stated-night";

/** What the check found, and what was in the sheets. */
interface Checked {
  of: StatedNight;
  said: string;
  broken: string[];
}

async function checked(host: Host): Promise<Checked> {
  await host.settled();
  const of = await readNow(host, STATED_NIGHT);
  const { program, wrong } = of.stated!;
  if (!program) return { of, said: wrong[0] ?? "The Program is not complete: see above", broken: [] };
  const { schedule, wrong: lines } = await readStartTimes(host, program);
  const broken = [...lines, ...verifyNight(program, schedule)];
  const lack = lackWords(of.stated!);
  if (schedule.length === 0 && lines.length === 0) {
    return { of, said: "The sheet Start times holds no start times yet", broken: [] };
  }
  if (broken.length === 1) return { of, said: "1 rule is broken:", broken };
  if (broken.length > 1) return { of, said: `${broken.length} rules are broken:`, broken };
  const kept = `${schedule.length} start times keep every rule of the Program as it is now`;
  return { of, said: lack ? `${kept}, but ${lack}` : kept, broken };
}

/** Checks what is in the sheet Start times, typed or written, against the Program as it is `now`. */
export function CheckSection({ host, id, now }: { host: Host; id: string; now: StatedNight }) {
  const [found, setFound] = useState<Checked | null>(null);
  const task = useTask();
  const answer = useInSight(found);
  const check = () =>
    task.attempt("Checking", async () => {
      setFound(null);
      setFound(await checked(host));
      return "";
    });
  return (
    <section aria-labelledby={`${id}-check`}>
      <h3 id={`${id}-check`}>Check the sheet</h3>
      <p className="note">Run this check after you edit the start times or the Program.</p>
      <div className="actions">
        <Button onClick={check}>Check the start times in the sheet</Button>
      </div>
      <TaskLine task={task} />
      <div ref={answer}>{found && <Answer found={found} now={now} />}</div>
    </section>
  );
}

/** The answer for as long as the sheets hold what was checked. */
function Answer({ found: { of, said, broken }, now }: { found: Checked; now: StatedNight }) {
  if (!same(of, now)) return <Stale what="The Program or the sheet Start times" again="check again." />;
  return (
    <>
      <p role="status">{said}</p>
      <ul>
        {broken.map((each) => (
          <li key={each}>{each}</li>
        ))}
      </ul>
    </>
  );
}
