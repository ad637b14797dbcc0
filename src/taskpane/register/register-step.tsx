import { Button } from "@fluentui/react-components";
import { useId } from "react";
import { MEASURES } from "../../core/figures/measures";
import { NurseryPlan } from "../new-audit/nursery-plan";
import { Failure } from "../parts/task/failure";
import { TaskLine } from "../parts/task/task-line";
import { useTask } from "../parts/task/use-task";
import type { StepProps } from "../step";
import { useWatched } from "../workbook/use-watched";
import { AddSection } from "./add-section";
import { Findings } from "./findings";
import { REGISTER, usable } from "./read-register";
import { putIntoProgram } from "./to-program";
import { TrendSection } from "./trend-section";

/** The audits of every block over time. */
export function RegisterStep({ host, keep }: StepProps) {
  const id = useId();
  const { found: book, failure } = useWatched(host, REGISTER);
  const task = useTask();
  return (
    <section aria-labelledby={`${id}-register`}>
      <h2 id={`${id}-register`}>Register</h2>
      <Failure words={failure} />
      {book === null && !failure && <NurseryPlan host={host} keep={keep} />}
      {book && (
        <>
          <p role="status">
            {book.lines.length === 0
              ? "The register is empty: add audits from their files, or type a line for each on the sheet Register."
              : `${book.lines.length === 1 ? "1 audit" : `${book.lines.length} audits`} in the register.`}
          </p>
          <AddSection host={host} keep={keep} id={id} />
          {book.lines.length > 0 && <Findings book={book} />}
          <TrendSection host={host} keep={keep} book={book} id={id} />
          <h3>The Program</h3>
          <p className="note">
            Name, area, {MEASURES.MAR.short}, multiplier and flow of each block's last audit, for the night's program.
          </p>
          <div className="actions">
            <Button
              disabledFocusable={usable(book).length === 0 || task.busy !== ""}
              onClick={() => task.attempt("Writing into the Program", () => putIntoProgram(host, keep))}
            >
              Put the latest audit of each block into the Program
            </Button>
          </div>
          <TaskLine task={task} />
        </>
      )}
    </section>
  );
}
