import { DEFAULT_STYLES } from "@univerjs/core";
import "./font.css";

const CELL_FONT = "Calibri";

const STYLES = ["", "bold ", "italic ", "italic bold "];

/** Makes the font of the workbooks that of every cell that names none, and loads it: a canvas waits for no font. */
export async function cellFont(): Promise<void> {
  DEFAULT_STYLES.ff = CELL_FONT;
  await Promise.allSettled(STYLES.map((style) => document.fonts.load(`${style}11pt ${CELL_FONT}`)));
}
