import { readFileSync, writeFileSync } from "node:fs";
import { shareCopy } from "../share/copy/share-copy";

async function main([from, to]: readonly string[]): Promise<void> {
  try {
    if (!from || !to) throw new Error("usage: npm run -s share:copy -- IN OUT");
    writeFileSync(to, await shareCopy(new Uint8Array(readFileSync(from)), new Date()));
  } catch (error) {
    console.error(error instanceof Error ? error.message : String(error));
    process.exitCode = 1;
  }
}

main(process.argv.slice(2));
