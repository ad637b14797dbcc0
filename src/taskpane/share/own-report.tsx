import { Button } from "@fluentui/react-components";
import { useEffect, useState } from "react";
import { createPortal } from "react-dom";
import { dayNumber, isoDay } from "../../cells/day-number";
import type { Host } from "../../hosts/host";
import type { CopyReport } from "../../share/copy-report";
import { filledIn } from "../../share/report/filled-in";
import { TaskLine } from "../parts/task/task-line";
import { useTask } from "../parts/task/use-task";
import { reportName } from "./copy-name";
import { OwnReportView } from "./own-report-view";

const PRINTING = "printing-own-report";

interface Props {
  host: Host;
  /** The file's name. */
  file: string;
  report: CopyReport;
  /** What speaks of another code; "" where nothing does. */
  other: string;
}

/** The authority's own report of a checked copy: printed, saved, or put into the open workbook. */
export function OwnReport({ host, file, report: { own: drawn, agrees }, other }: Props) {
  const task = useTask();
  /** How often it was asked for; 0 while nothing is printed. */
  const [printing, setPrinting] = useState(0);
  const name = reportName(file, agrees && other === "");
  useEffect(() => {
    if (printing === 0) return;
    const { title } = document;
    // Some browsers print after `print` has come back.
    const printed = () => setPrinting(0);
    addEventListener("afterprint", printed);
    document.body.classList.add(PRINTING);
    document.title = name.replace(/\.xlsx$/, "");
    window.print();
    return () => {
      removeEventListener("afterprint", printed);
      document.title = title;
      document.body.classList.remove(PRINTING);
    };
  }, [printing, name]);
  if (!drawn) return null;
  const own = filledIn(drawn, { file, day: isoDay(dayNumber(new Date())), other });
  const workbook = async () => {
    const { buildWorkbook } = await import("../../workbook/form/build");
    return buildWorkbook([own], {});
  };
  return (
    <section aria-label="The authority's own report">
      <h4>Your own report</h4>
      <p>
        From values calculated here, with what the file shows beside them: one page, or two where much was typed. It
        takes no looks from the file.
      </p>
      <div className="actions">
        {host.saves && <Button onClick={() => setPrinting((times) => times + 1)}>Print the report</Button>}
        <Button onClick={() => task.attempt("Saving the report", async () => host.deliver(await workbook(), name))}>
          {host.saves ? "Save as .xlsx" : "Open as a workbook"}
        </Button>
        <Button
          onClick={() =>
            task.attempt("Placing the report", async () => {
              await host.insertSheets(await workbook());
              await host.select({ sheet: own.name, address: "A1" });
              return `The sheet ${own.name} is in the open workbook.`;
            })
          }
        >
          Place as a sheet
        </Button>
      </div>
      <TaskLine task={task} />
      {printing > 0 && createPortal(<OwnReportView report={own} />, document.body)}
    </section>
  );
}
