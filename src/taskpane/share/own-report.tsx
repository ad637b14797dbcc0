import { Button } from "@fluentui/react-components";
import { useEffect, useState } from "react";
import { createPortal } from "react-dom";
import type { Host } from "../../hosts/host";
import type { CopyReport } from "../../share/copy-report";
import { TaskLine } from "../parts/task-line";
import { useTask } from "../parts/use-task";
import { OwnReportView } from "./own-report-view";

const PRINTING = "printing-own-report";

/** The authority's own report of a checked copy: printed, saved, or put into the open workbook. */
export function OwnReport({ host, report: { own, facts } }: { host: Host; report: CopyReport }) {
  const task = useTask();
  const [printing, setPrinting] = useState(false);
  const name = ["report of", facts.site, facts.block, facts.date].filter(Boolean).join(" ");
  useEffect(() => {
    if (!printing) return;
    document.body.classList.add(PRINTING);
    const { title } = document;
    document.title = name;
    window.print();
    document.title = title;
    document.body.classList.remove(PRINTING);
    setPrinting(false);
  }, [printing, name]);
  if (!own) return null;
  const file = async () => {
    const { buildWorkbook } = await import("../../workbook/form/build");
    return buildWorkbook([own], {});
  };
  return (
    <section aria-label="The authority's own report">
      <h4>Your own report</h4>
      <p>
        One page from values calculated here, with what the file shows beside them. It takes no looks from the file.
      </p>
      <div className="actions">
        {host.saves && <Button onClick={() => setPrinting(true)}>Print the report</Button>}
        <Button
          onClick={() =>
            task.attempt("Saving the report", async () =>
              host.deliver(await file(), `${name.replace(/[\\/:*?"<>|]/g, " ")}.xlsx`),
            )
          }
        >
          {host.saves ? "Save as .xlsx" : "Open as a workbook"}
        </Button>
        <Button
          onClick={() =>
            task.attempt("Placing the report", async () => {
              await host.insertSheets(await file());
              return `The sheet ${own.name} is in the open workbook.`;
            })
          }
        >
          Place as a sheet
        </Button>
      </div>
      <TaskLine task={task} />
      {printing && createPortal(<OwnReportView report={own} />, document.body)}
    </section>
  );
}
