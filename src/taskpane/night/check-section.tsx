import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { verifyNight } from "../../core/program/verify-night";
import type { Host } from "../../hosts/host";
import { programOf } from "../../workbook/program-entries";
import { readProgramSheet } from "../../workbook/program-sheet";
import { TaskLine } from "../task-line";
import { useTask } from "../use-task";
import { readStartTimes } from "./start-times";

/** Checks what stands in the sheet Start times, typed or written, against the Program as it is now. */
export function CheckSection({ host, id }: { host: Host; id: string }) {
  const [found, setFound] = useState<string[]>([]);
  const task = useTask();
  const check = () =>
    task.attempt("Checking", async () => {
      setFound([]);
      const { program, wrong } = programOf((await readProgramSheet(host))!);
      if (!program) throw new Error(wrong[0] ?? "The Program is not complete: see above");
      const { schedule, wrong: lines } = await readStartTimes(host, program);
      if (schedule.length === 0 && lines.length === 0) return "The sheet Start times holds no start times yet";
      const broken = [...lines, ...verifyNight(program, schedule)];
      setFound(broken);
      if (broken.length > 0) return `${broken.length} ${broken.length === 1 ? "rule is" : "rules are"} broken:`;
      return `${schedule.length} start times keep every rule of the Program as it is now`;
    });
  return (
    <section aria-labelledby={`${id}-check`}>
      <h3 id={`${id}-check`}>Check the sheet</h3>
      <p className="note">
        After a change by hand, or of the Program: every rule is looked at again, rests and pairs too.
      </p>
      <div className="actions">
        <Button onClick={check}>Check the start times in the sheet</Button>
      </div>
      <TaskLine task={task} />
      <ul>
        {found.map((each) => (
          <li key={each}>{each}</li>
        ))}
      </ul>
    </section>
  );
}
