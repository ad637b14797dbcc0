import { Button } from "@fluentui/react-components";
import { MEASURES } from "../../core/figures/measures";
import { WATER } from "../../core/figures/water";
import type { Host } from "../../hosts/host";
import type { CheckedFile } from "../../share/copy-report";
import { statedFigure } from "../../share/register-row";
import { figure } from "../parts/figure";
import { TableActions } from "../parts/files/table-actions";
import { TaskLine } from "../parts/task/task-line";
import { useTask } from "../parts/task/use-task";
import { useRevealed } from "../parts/use-revealed";
import type { Act } from "../workbook/act";
import { copyTools } from "./copy-tools";

const FIGURES = [
  { name: "Used_MAR", label: MEASURES.MAR.short, unit: MEASURES.MAR.unit },
  { name: "Used_CU", label: MEASURES.CU.short, unit: MEASURES.CU.unit },
  { name: "Used_DU", label: MEASURES.DU.short, unit: MEASURES.DU.unit },
  { name: "Used_SC_Can", label: MEASURES.SC_CAN.name, unit: MEASURES.SC_CAN.unit },
  { name: "Result_Water_kL", label: `${WATER.NOW.short} of the valve`, unit: WATER.NOW.unit },
];

function stated({ report }: CheckedFile, { name, label, unit }: (typeof FIGURES)[number]): string {
  const value = report ? statedFigure(report, name) : "";
  return typeof value === "number" ? `${label} ${figure(value)} ${unit}`.trim() : "";
}

const verdict = ({ report }: CheckedFile) => (!report ? "not read" : report.agrees ? "agrees" : "does not agree");
const SYMBOLS = { agrees: "✓", "does not agree": "✗", "not read": "?" };

/** The files that were checked, one a line, and the way to save them as a table. */
export function RegisterTable({
  host,
  keep,
  files,
  others,
  open,
}: {
  host: Host;
  keep: (act: Act) => void;
  files: readonly CheckedFile[];
  /** Of each file, what speaks of another code than the first of its site, block and date. */
  others: readonly string[];
  /** Shows the report of one of them, by its place in the list. */
  open: (index: number) => void;
}) {
  const task = useTask();
  const heading = useRevealed(files);
  const save = () =>
    task.attempt("Saving the register", async () => {
      const { registerTable } = await copyTools();
      return host.deliver((await registerTable(files, others)).xlsx, "register of audits.xlsx");
    });
  const differing = files.filter((one) => verdict(one) !== "agrees").length;
  return (
    <section aria-labelledby="canfall-register">
      <h3 id="canfall-register" ref={heading} tabIndex={-1}>
        Register
      </h3>
      <p role="status">
        {files.length} files, {differing === 0 ? "all agree" : `${differing} to look at`}
      </p>
      <table>
        <caption>Figures as each file states them</caption>
        <thead>
          <tr>
            <th scope="col">File</th>
            <th scope="col" className="right">
              Figures and check
            </th>
          </tr>
        </thead>
        <tbody>
          {files.map((one, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: two folders may hold files of one name
            <tr key={index}>
              <th scope="row">
                <button type="button" className="link" onClick={() => open(index)}>
                  {one.name}
                </button>
                {one.report && (
                  <span className="detail">
                    {[one.report.facts.site, one.report.facts.block, one.report.facts.date, one.report.code]
                      .filter(Boolean)
                      .join(" · ")}
                  </span>
                )}
              </th>
              <td className="right">
                {FIGURES.map((wanted) => stated(one, wanted))
                  .filter(Boolean)
                  .map((text) => (
                    <span key={text} className="detail">
                      {text}
                    </span>
                  ))}
                <span aria-hidden="true">{SYMBOLS[verdict(one)]} </span>
                {verdict(one)}
                {one.problem && <span className="detail">{one.problem}</span>}
                {others[index] && <span className="detail problem">{others[index]}</span>}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <div className="actions">
        <Button onClick={save}>{host.saves ? "Save as .xlsx" : "Open as a workbook"}</Button>
        <TableActions
          {...{ host, keep, task, file: "register of audits.csv", sheet: "Register of copies" }}
          rows={async () => (await (await copyTools()).registerTable(files, others)).rows}
        />
      </div>
      <TaskLine task={task} />
    </section>
  );
}
