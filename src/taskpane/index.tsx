import { createRoot } from "react-dom/client";
import { excelHost } from "../hosts/excel/excel";
import { Pane } from "./pane";

declare const Office: { onReady(): Promise<unknown> };

Office.onReady().then(() => {
  createRoot(document.getElementById("pane")!).render(<Pane host={excelHost()} />);
});
