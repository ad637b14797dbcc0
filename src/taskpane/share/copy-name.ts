import { isoDay } from "../../cells/day-number";
import type { Host } from "../../hosts/host";
import { numberIn, readNamed, textIn } from "../workbook/named";

const NAMES = ["Site_Name", "Block_Name", "Test_Date"];
const LONGEST = 60;
/** A file's name without its folders and its ending. */
const FILE_NAME = /([^\\/]*?)(?:\.xlsx)?$/i;

/** Without what Windows, a Mac or a web server could trip over. */
const fileWords = (text: string): string =>
  text
    // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is taken out
    .replace(/[\\/:*?"<>|#%\x00-\x1f]/g, " ")
    .replace(/\s+/g, " ")
    .trim()
    .slice(0, LONGEST);

/** `Example Nursery Block 7 2026-11-25 share copy.xlsx`: the site, the block and the day of the test, where it is typed. */
export async function copyName(host: Host): Promise<string> {
  const found = await readNamed(host, NAMES);
  const day = numberIn(found.Test_Date);
  const parts = [
    fileWords(textIn(found.Site_Name)),
    fileWords(textIn(found.Block_Name)),
    isoDay(day) || "no test date",
  ];
  return `${[...parts, "share copy"].filter(Boolean).join(" ")}.xlsx`;
}

/** `report on sent, findings.xlsx`: the file that it is about and what the check says, for the report on a copy. */
export function reportName(file: string, agrees: boolean): string {
  const about = fileWords(FILE_NAME.exec(file)![1]!) || "a copy";
  return `report on ${about}, ${agrees ? "agrees" : "findings"}.xlsx`;
}
