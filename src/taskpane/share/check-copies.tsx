import { useEffect, useEffectEvent, useRef, useState } from "react";
import type { Host } from "../../hosts/host";
import type { CheckedFile } from "../../share/copy-report";
import type { Act } from "../workbook/act";
import type { Reading } from "../workbook/reading";
import { useWatched } from "../workbook/use-watched";
import { CheckedFiles } from "./checked-files";
import { CopyReportView } from "./copy-report-view";
import { comparedCodes } from "./kept-codes";
import { RegisterTable } from "./register-table";
import { useCheckedFiles } from "./use-checked-files";

/** The name of the open workbook; "" where the spreadsheet does not tell. */
const OPEN_FILE: Reading<string> = { wants: {}, read: ({ seen }) => seen.file ?? "" };

interface Props {
  host: Host;
  keep: (act: Act) => void;
  /** Files to check at once. */
  handed?: readonly File[] | undefined;
}

/** Checks copies that somebody sent: one becomes a report, several become a register. */
export function CheckCopies({ host, keep, handed }: Props) {
  const [checked, setChecked] = useState<readonly CheckedFile[]>([]);
  const [others, setOthers] = useState<readonly string[]>([]);
  const [checks, setChecks] = useState(0);
  const [shown, setShown] = useState<number | null>(null);
  const files = useCheckedFiles();
  const { found: open } = useWatched(host, OPEN_FILE);

  async function take(given: readonly File[]): Promise<void> {
    const found = await files.check(given);
    if (!found) return;
    setChecks(checks + 1);
    setChecked(found);
    setOthers(comparedCodes(found));
    setShown(found.length === 1 ? 0 : null);
  }

  const place = useRef<HTMLElement>(null);
  const taken = useRef<readonly File[]>(undefined);
  const takeHanded = useEffectEvent((given: readonly File[]) => {
    if (taken.current === given) return; // the step was only opened again
    taken.current = given;
    place.current?.scrollIntoView?.();
    if (given.length > 0) void take(given);
  });
  useEffect(() => {
    if (handed) takeHanded(handed);
  }, [handed]);

  const report = shown === null ? undefined : checked[shown];
  const isAnother = report && open && report.name.split("/").at(-1) !== open;
  return (
    <section aria-labelledby="canfall-check" ref={place}>
      <h2 id="canfall-check">Check a copy</h2>
      <p>
        Everything is calculated again from the readings in the file, whatever its formulas say. That it agrees means
        that the figures follow from these readings, not that the readings are true. The first code of each site, block
        and date is kept in this browser; a later copy with another code is named.
      </p>
      <CheckedFiles label="Copies to check" files={files} take={take} />
      {checked.length > 1 && (
        <RegisterTable key={checks} host={host} keep={keep} files={checked} others={others} open={setShown} />
      )}
      {isAnother && <p className="note">The open workbook is another one: nothing of this copy is shown in it.</p>}
      {report && (
        <CopyReportView key={`${checks} ${shown}`} host={host} checked={report} other={others[shown!] ?? ""} revealed />
      )}
    </section>
  );
}
