import { Button } from "@fluentui/react-components";
import { useEffect, useState } from "react";
import type { Host } from "../../hosts/host";
import type { CheckedFile, CopyReport } from "../../share/copy-report";
import { keepNewest } from "../answer/keep-answer";
import type { Question } from "../parts/task/question";
import { TaskLine } from "../parts/task/task-line";
import { useTask } from "../parts/task/use-task";
import { copyName } from "./copy-name";
import { CopyReportView } from "./copy-report-view";
import { copyTools } from "./copy-tools";

/** What whoever checks the copy would find, before it is handed out. */
function doubt({ figures, findings: all }: CopyReport): string {
  const findings = all.filter((one) => one.class !== "added");
  const wrong = figures.filter(({ agrees }) => !agrees).length;
  const said = [
    wrong > 0 && `${wrong} of ${figures.length} figures do not agree with what the readings give`,
    findings.length > 0 && (findings.length === 1 ? "1 finding" : `${findings.length} findings`),
  ].filter(Boolean);
  return `Whoever checks this copy will see: ${said.join(", ")}. They are listed below. Hand it out all the same?`;
}

/** Makes the copy for the water authority, and checks it as they would; the open workbook stays as it is. */
export function MakeCopy({ host }: { host: Host }) {
  const task = useTask();
  const [doubtful, setDoubtful] = useState<CheckedFile | null>(null);

  useEffect(() => {
    void keepNewest(host).catch(() => {});
  }, [host]);

  async function make(): Promise<string | Question> {
    const now = new Date();
    const { shareCopy, checkedFile } = await copyTools();
    setDoubtful(null);
    await host.settled();
    await keepNewest(host);
    await host.settled();
    const file = await shareCopy(await host.bytes(), now);
    const name = await copyName(host);
    const handOut = () => host.deliver(file, name);
    const checked = await checkedFile(name, file);
    if (checked.report?.agrees) return handOut();
    setDoubtful(checked);
    return {
      text: checked.report ? doubt(checked.report) : `The copy cannot be checked: ${checked.problem}. Hand it out?`,
      yes: "Hand it out all the same",
      no: "Do not hand it out",
      doing: "Handing out the share copy",
      act: handOut,
    };
  }

  return (
    <section aria-labelledby="canfall-share">
      <h2 id="canfall-share">Share</h2>
      <p>
        A share copy holds the same sheets with native formulas in place of Canfall's functions, so that anybody can
        recalculate every figure, and an Evidence sheet that lists what was replaced and all that was typed. It is
        checked before it is handed out. The open workbook stays as it is.
      </p>
      <Button
        appearance="primary"
        disabledFocusable={task.busy !== ""}
        onClick={() => task.attempt("Making the share copy", make)}
      >
        Make a share copy
      </Button>
      <TaskLine task={task} />
      {doubtful && (
        <details open={task.question !== null}>
          <summary>What does not agree in this copy</summary>
          <CopyReportView host={host} checked={doubtful} />
        </details>
      )}
    </section>
  );
}
