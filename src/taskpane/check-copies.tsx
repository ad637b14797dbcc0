import { Button, Spinner } from "@fluentui/react-components";
import { useRef, useState } from "react";
import type { Host } from "../hosts/host";
import type { CheckedFile } from "../workbook/share/copy-report";
import { checkFiles } from "./check-files";
import { CopyReportView } from "./copy-report-view";
import { DropZone } from "./drop-zone";
import { workbooksAmong } from "./dropped-files";
import { Failure } from "./failure";
import { RegisterTable } from "./register-table";
import { words } from "./words";

/** Checks copies that somebody sent: one becomes a report, several become a register. */
export function CheckCopies({ host }: { host: Host }) {
  const [checked, setChecked] = useState<readonly CheckedFile[]>([]);
  const [shown, setShown] = useState<number | null>(null);
  const [progress, setProgress] = useState("");
  const [problem, setProblem] = useState("");
  const stop = useRef(false);

  async function check(given: readonly File[]): Promise<void> {
    const files = workbooksAmong(given);
    setProblem(files.length === 0 ? "There is no .xlsx file among what was chosen" : "");
    if (files.length === 0) return;
    stop.current = false;
    try {
      const told = (done: number, name: string) => setProgress(`Checking ${done + 1} of ${files.length}: ${name} …`);
      const found = await checkFiles(files, told, () => stop.current);
      setChecked(found);
      setShown(found.length === 1 ? 0 : null);
    } catch (reason) {
      setProblem(words(reason));
    }
    setProgress("");
  }

  const report = shown === null ? undefined : checked[shown];
  return (
    <section aria-labelledby="canfall-check">
      <h2 id="canfall-check">Check a copy</h2>
      <p>
        Everything is worked out again from the readings in the file, whatever its formulas say. That it agrees means
        that the figures follow from these readings, not that the readings are true.
      </p>
      <DropZone busy={progress !== ""} take={check} fail={setProblem} />
      <div role="status" className="progress">
        {progress && <Spinner size="tiny" labelPosition="after" label={progress} />}
      </div>
      {progress && (
        <Button
          onClick={() => {
            stop.current = true;
          }}
        >
          Stop
        </Button>
      )}
      <Failure words={problem} />
      {checked.length > 1 && <RegisterTable host={host} files={checked} open={setShown} />}
      {report && <CopyReportView checked={report} />}
    </section>
  );
}
