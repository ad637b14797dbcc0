import { createRoot } from "react-dom/client";
import { excelHost } from "../hosts/excel/excel";
import { Pane } from "./pane";

declare const Office: { onReady(): Promise<{ host: unknown }> } | undefined;

/** Outside Excel there is nothing to show but what Canfall is, and how it gets into Excel. */
const explain = () => location.replace("index.html");

if (typeof Office === "undefined") explain();
else {
  Office.onReady().then(({ host }) => {
    if (host === null) explain();
    else createRoot(document.getElementById("pane")!).render(<Pane host={excelHost()} />);
  });
}
