import { strFromU8, unzipSync } from "fflate";
import type { Results } from "../../src/workbook/form/build";

const ENTITIES: Record<string, string> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };
const CELL_WITH_FORMULA = /<c ([^>]*[^>/])><f(?:\s[^>]*)?(?:\/>|>[^<]*<\/f>)(?:<v[^>]*>([^<]*)<\/v>)?/g;

const plain = (text: string) =>
  text.replace(/&(?:#x([0-9a-f]+)|#(\d+)|(\w+));/gi, (_, hex?: string, code?: string, name?: string) =>
    name ? ENTITIES[name]! : String.fromCodePoint(hex ? Number.parseInt(hex, 16) : Number(code)),
  );

const attribute = (tag: string, name: string) => plain(new RegExp(`\\b${name}="([^"]*)"`).exec(tag)?.[1] ?? "");

function result(type: string, value: string): string | number | boolean {
  if (type === "b") return value === "1";
  return type === "str" || type === "e" || value === "" ? plain(value) : Number(value);
}

/** What each formula of a file gave when the file was saved, by `Sheet!A1`; errors by their name. */
export function formulaResults(file: Uint8Array): Results {
  const parts = unzipSync(file);
  const xml = (part: string) => strFromU8(parts[part]!);
  const tags = (part: string, name: string) => xml(part).match(new RegExp(`<${name} [^>]*>`, "g"))!;
  const targets = new Map(
    tags("xl/_rels/workbook.xml.rels", "Relationship").map((tag) => [attribute(tag, "Id"), attribute(tag, "Target")]),
  );
  const results = new Map<string, string | number | boolean>();
  for (const tag of tags("xl/workbook.xml", "sheet")) {
    for (const [, cell, value = ""] of xml(`xl/${targets.get(attribute(tag, "r:id"))}`).matchAll(CELL_WITH_FORMULA)) {
      results.set(`${attribute(tag, "name")}!${attribute(cell!, "r")}`, result(attribute(cell!, "t"), value));
    }
  }
  return results;
}
