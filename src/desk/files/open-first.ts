import { bookOf, type Grid } from "../../hosts/desk/grid";
import type { Host } from "../../hosts/host";
import type { Book } from "../../xlsx/desk-file/book";
import { EXAMPLE_MARK, unpacked } from "../../xlsx/desk-file/packed-book";
import { EXAMPLE_READINGS } from "./example";
import type { Files } from "./files";
import { readXlsx } from "./read-xlsx";

interface Example {
  name: string;
  /** The sheet that it opens on. */
  sheet: string;
}

const AUDIT: Example = { name: "example-audit.xlsx", sheet: "Results" };
const NURSERY: Example = { name: "example-nursery.xlsx", sheet: "Program" };

/** What the desk opens with: an example's file, or the worked sheet of the functions, and what to say of that. */
export type First = (Example & { book: Book; bytes: Uint8Array }) | { said: string };

async function fetched(name: string): Promise<Response> {
  const answer = await fetch(name);
  if (!answer.ok) throw new Error(`the page's address answered with status ${answer.status}`);
  return answer;
}

/** The file of an example, and its book, which the build has read. */
async function built({ name }: Example): Promise<{ book: Book; bytes: Uint8Array }> {
  const [book, file] = await Promise.all([fetched(name.replace("xlsx", "json")), fetched(name)]);
  return { book: unpacked(await book.text()), bytes: new Uint8Array(await file.arrayBuffer()) };
}

/** Fetches the example that the page's address asks for, the audit where it names none. */
export async function readFirst(): Promise<First> {
  const asked = new URLSearchParams(location.search).get("example");
  if (asked === "functions") return { said: "" };
  const example = asked === "nursery" ? NURSERY : AUDIT;
  try {
    return { ...example, ...(await built(example)) };
  } catch (problem) {
    const reason = problem instanceof Error ? problem.message : String(problem);
    return { said: `${example.name} could not be opened: ${reason}` };
  }
}

/** Shows it, an example with the figures of its file; answers what to say of it. */
export async function openFirst(first: First, grid: Grid, files: Files, host: Host): Promise<string> {
  if ("book" in first) {
    await files.take(first.book, first.name, first.bytes, () => readXlsx(first.bytes, EXAMPLE_MARK));
    bookOf(grid).setActiveSheet(bookOf(grid).getSheetByName(first.sheet) ?? bookOf(grid).getSheets()[0]!);
    return files.name;
  }
  grid.api.getFormula().executeCalculation();
  await host.select(EXAMPLE_READINGS);
  return first.said;
}
