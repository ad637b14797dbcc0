import type { XlsxFile } from "../../xlsx/desk-file/desk-file";
import { checkedZip } from "../../xlsx/parts/safe-file";

/** Reads a file, whose reader the page fetches when it is needed. */
export async function readXlsx(bytes: Uint8Array, mark?: string): Promise<XlsxFile> {
  checkedZip(bytes);
  const { XlsxFile } = await import("../../xlsx/desk-file/desk-file");
  return XlsxFile.open(bytes, mark);
}
