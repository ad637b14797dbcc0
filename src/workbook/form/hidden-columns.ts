import { columnNumber } from "../../cells/letters";
import type { SheetSpec } from "./sheet-spec";

/** The numbers of the columns that a sheet does not show. */
export const hiddenColumns = ({ hidden = [] }: SheetSpec): number[] =>
  hidden.flatMap((columns) => {
    const [from, to = from] = columns.split(":").map(columnNumber);
    return Array.from({ length: to! - from! + 1 }, (_, index) => from! + index);
  });
