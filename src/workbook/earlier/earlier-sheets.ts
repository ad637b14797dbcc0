import { inflateSync, strFromU8 } from "fflate";
import type { SheetSpec } from "../form/sheet-spec";

/** What is new since a version, for somebody who works with a workbook of it. */
const EARLIER: Readonly<Record<string, { kept: () => Promise<{ deflated: string }>; news: string }>> = {
  "1.1": {
    kept: () => import("./audit-1.1.json"),
    news: "by area as soon as places and bed are typed, with no step at 5 %; the share of pots is a share of the area; map and mean on the same basis; places of heads, throw and supply side, from which the cause is read",
  },
};

/** The versions of the audit workbook whose sheets are known beside the present ones. */
export const EARLIER_VERSIONS: readonly string[] = Object.keys(EARLIER);

/** Said where a workbook of an earlier version is open or checked; null for other versions. */
export function newsSince(version: string): string | null {
  const earlier = Object.hasOwn(EARLIER, version) ? EARLIER[version] : undefined;
  return earlier
    ? `This workbook is of version ${version} and keeps the rules of that version. New since: ${earlier.news}. A new audit has them.`
    : null;
}

/** The audit's sheets as they were in an earlier version, as far as a check needs them; null where they are not kept. */
export async function earlierSheets(version: string): Promise<readonly SheetSpec[] | null> {
  const earlier = Object.hasOwn(EARLIER, version) ? EARLIER[version] : undefined;
  if (!earlier) return null;
  const { deflated } = await earlier.kept();
  const bytes = Uint8Array.from(atob(deflated), (sign) => sign.charCodeAt(0));
  return JSON.parse(strFromU8(inflateSync(bytes))) as SheetSpec[];
}
