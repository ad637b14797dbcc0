import type { CheckedFile } from "./copy-report";

/**
 * Of each file, what speaks of another code: the first file of a site, block and day keeps its code, and a later one of
 * the same with another code is of other readings. "" where there is nothing to say.
 */
export function otherCodes(files: readonly CheckedFile[]): string[] {
  const first = new Map<string, CheckedFile>();
  return files.map((file) => {
    const { report } = file;
    if (!report || report.code === "") return "";
    const { site, block, date } = report.facts;
    const key = [site, block, date].map((part) => part.trim().toLowerCase()).join("\n");
    const before = first.get(key);
    if (!before) first.set(key, file);
    if (!before?.report || before.report.code === report.code) return "";
    return `Of the same site, block and date as ${before.name}, whose code is ${before.report.code}; ${file.name} has the code ${report.code}: what was typed is not the same.`;
  });
}
