import type { ISheetImage } from "@univerjs/preset-sheets-drawing";

/** A picture as the grid holds it, with what the grid's own form lacks; the grid keeps both in its workbook data. */
export interface DeskDrawing extends ISheetImage {
  name: string;
  /** What it shows, in words. */
  alternative: string;
  /** Whether its file gives it a size, not an end among cells. */
  sized?: true;
}
