import type { CheckedFile } from "../../share/copy-report";
import { words } from "../parts/task/words";
import { copyTools } from "./copy-tools";

const LARGEST_BYTES = 20_000_000;

/** With its folders, where a folder was chosen. */
const nameOf = (file: File): string => file.webkitRelativePath || file.name;

async function bytesOf(file: File): Promise<Uint8Array> {
  if (file.size > LARGEST_BYTES) {
    throw new Error(`the file must have at most 20 MB, got ${(file.size / 1e6).toFixed(1)} MB`);
  }
  return new Uint8Array(await file.arrayBuffer());
}

/** So that the page can show how far it is. */
const breath = () => new Promise((done) => setTimeout(done));

/** Checks files one after the other; `stopped` is asked before each. */
export async function checkFiles(
  files: readonly File[],
  told: (done: number, name: string) => void,
  stopped: () => boolean,
): Promise<CheckedFile[]> {
  const { checkedFile } = await copyTools();
  const checked: CheckedFile[] = [];
  for (const file of files) {
    if (stopped()) break;
    told(checked.length, file.name);
    await breath();
    const name = nameOf(file);
    try {
      checked.push(await checkedFile(name, await bytesOf(file)));
    } catch (reason) {
      checked.push({ name, report: null, problem: words(reason) });
    }
  }
  return checked;
}
