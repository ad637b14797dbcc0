import { mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { calculatedBooks, TEMPLATES } from "./templates";

const FOLDER = fileURLToPath(new URL("../../templates", import.meta.url));

/** Builds the workbooks that are handed out and writes them to their folder. */
async function writeTemplates(): Promise<void> {
  mkdirSync(FOLDER, { recursive: true });
  const files = await calculatedBooks(Object.values(TEMPLATES));
  Object.keys(TEMPLATES).forEach((name, index) => {
    writeFileSync(`${FOLDER}/${name}`, files[index]!);
  });
}

writeTemplates();
