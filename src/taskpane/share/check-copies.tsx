import { useState } from "react";
import type { Host } from "../../hosts/host";
import type { CheckedFile } from "../../share/copy-report";
import type { Act } from "../workbook/act";
import { CheckedFiles } from "./checked-files";
import { CopyReportView } from "./copy-report-view";
import { RegisterTable } from "./register-table";
import { useCheckedFiles } from "./use-checked-files";

/** Checks copies that somebody sent: one becomes a report, several become a register. */
export function CheckCopies({ host, keep }: { host: Host; keep: (act: Act) => void }) {
  const [checked, setChecked] = useState<readonly CheckedFile[]>([]);
  const [shown, setShown] = useState<number | null>(null);
  const files = useCheckedFiles();

  async function take(given: readonly File[]): Promise<void> {
    const found = await files.check(given);
    if (!found) return;
    setChecked(found);
    setShown(found.length === 1 ? 0 : null);
  }

  const report = shown === null ? undefined : checked[shown];
  return (
    <section aria-labelledby="canfall-check">
      <h2 id="canfall-check">Check a copy</h2>
      <p>
        Everything is calculated again from the readings in the file, whatever its formulas say. That it agrees means
        that the figures follow from these readings, not that the readings are true.
      </p>
      <CheckedFiles label="Copies to check" files={files} take={take} />
      {checked.length > 1 && <RegisterTable host={host} keep={keep} files={checked} open={setShown} />}
      {report && <CopyReportView host={host} checked={report} revealed />}
    </section>
  );
}
