import { readFileSync } from "node:fs";
import { XlsxFile } from "../xlsx/desk-file/desk-file";
import { EXAMPLE_MARK, packed } from "../xlsx/desk-file/packed-book";

/** `tsx src/commands/pack-example.ts FILE` prints an example as the desk opens it; the build asks for it. */
async function pack(path: string): Promise<void> {
  const file = await XlsxFile.open(new Uint8Array(readFileSync(path)), EXAMPLE_MARK);
  process.stdout.write(packed(file.book()));
}

void pack(process.argv[2]!);
