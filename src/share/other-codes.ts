import type { CheckedFile } from "./copy-report";
import { sameToTheEye } from "./looks/sheets/look-alike";

/** The file whose code an audit was first seen with. */
export interface FirstCode {
  name: string;
  code: string;
}

/** First codes by site, block and day. */
export type FirstCodes = ReadonlyMap<string, FirstCode>;

function keyOf({ report }: CheckedFile): string | null {
  if (!report || report.code === "") return null;
  const { site, block, date } = report.facts;
  return [site, block, date].map(sameToTheEye).join("\n");
}

/** The first codes with those of more files, which take the place of none. */
export function withFirstCodes(kept: FirstCodes, files: readonly CheckedFile[]): FirstCodes {
  const all = new Map(kept);
  for (const file of files) {
    const key = keyOf(file);
    if (key !== null && !all.has(key)) all.set(key, { name: file.name, code: file.report!.code });
  }
  return all;
}

/**
 * Of each file, what speaks of another code: the first file of a site, block and day keeps its code, and a later one of
 * the same with another code is of other readings. "" where there is nothing to say.
 *
 * @param kept First codes of files that were checked before
 */
export function otherCodes(files: readonly CheckedFile[], kept: FirstCodes = new Map()): string[] {
  const first = withFirstCodes(kept, files);
  return files.map((file) => {
    const key = keyOf(file);
    const before = key === null ? undefined : first.get(key);
    const code = file.report?.code;
    if (!before || before.code === code) return "";
    return `Of the same site, block and date as ${before.name}, whose code is ${before.code}; ${file.name} has the code ${code}: what was typed is not the same.`;
  });
}
