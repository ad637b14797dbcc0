import { Button } from "@fluentui/react-components";
import { Cautions } from "./cautions";
import { FirstFacts } from "./first-facts";
import { addSheets } from "./new-sheets";
import type { Question } from "./question";
import type { StepProps } from "./step";
import { TaskLine } from "./task-line";
import { templateFile } from "./template-file";
import { useTask } from "./use-task";
import { words } from "./words";

/** Sets up the audit workbook of a block. */
export function NewAudit({ host, keep }: StepProps) {
  const task = useTask();

  async function openNew(): Promise<string> {
    const opened = await host.openBook(await templateFile("block-audit"), "Block audit.xlsx");
    return opened ? "The audit is open as a workbook of its own." : "The open workbook stays.";
  }

  async function openExample(): Promise<string> {
    const opened = await host.openBook(await templateFile("example-audit"), "Example audit.xlsx");
    return opened ? "The example is open: Example Nursery, block 7, an invented block." : "The open workbook stays.";
  }

  async function add(): Promise<string | Question> {
    const file = await templateFile("block-audit");
    try {
      keep(await addSheets(host, file));
    } catch (reason) {
      return {
        text: `${words(reason)}. Nothing was changed. Open the audit as a new workbook instead?`,
        yes: "Open as a new workbook",
        no: "Leave it",
        doing: "Opening a new workbook",
        act: openNew,
      };
    }
    const first = await host.named("Site_Name");
    if (first) await host.select(first);
    return "The audit sheets stand behind the sheets that were there. Undo removes them";
  }

  return (
    <>
      <section aria-labelledby="canfall-new">
        <h2 id="canfall-new">New audit</h2>
        <p>
          One workbook holds the audit of one block: its facts, the catch cans, and from them the results, the run time,
          the water and a report.
        </p>
        <div className="actions">
          <Button
            appearance="primary"
            disabledFocusable={task.busy !== ""}
            onClick={() => task.attempt("Adding the audit sheets", add)}
          >
            Add the audit sheets to this workbook
          </Button>
          <Button disabledFocusable={task.busy !== ""} onClick={() => task.attempt("Opening a new workbook", openNew)}>
            Open as a new workbook
          </Button>
          <Button disabledFocusable={task.busy !== ""} onClick={() => task.attempt("Opening the example", openExample)}>
            Open the example
          </Button>
        </div>
        <TaskLine task={task} />
      </section>
      <FirstFacts host={host} keep={keep} />
      <Cautions />
    </>
  );
}
