import { NURSERY_EXAMPLE } from "../../workbook/nursery/examples/nursery";
import type { FileBook } from "../../xlsx/parts/workbook-file";
import { namedValue } from "../copy/evidence-rows";

const REMARKS = ["Plan_Remark", "Register_Remark"];

/** What the example plan says of itself in cells that a plan leaves blank, where a file says just that. */
export function exampleRemarks(book: FileBook): (readonly [name: string, remark: string])[] {
  return REMARKS.flatMap((name) => {
    const remark = NURSERY_EXAMPLE[name];
    return typeof remark === "string" && namedValue(book, name) === remark ? [[name, remark] as const] : [];
  });
}
