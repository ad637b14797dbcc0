import { edited, tagEdit } from "../parts/edits";
import { inPackage } from "../parts/relations";
import { decoded } from "../parts/xml";
import { childrenOf, xmlTree } from "../parts/xml-tree";
import { type Parts, writePart } from "./write-part";

const plain = (target: string): string => {
  try {
    return decodeURI(target);
  } catch {
    return target;
  }
};

/** Lets the links of shapes and pictures to places in the workbook, such as `#Block!A1`, follow as `change` says. */
export function relinkShapes(parts: Parts, change: (formula: string) => string): void {
  for (const [part, bytes] of [...parts]) {
    if (!part.endsWith(".rels")) continue;
    const xml = decoded(bytes);
    if (!/Target\s*=\s*["']#/.test(xml)) continue;
    const edits = childrenOf(xmlTree(xml), inPackage, "Relationship").flatMap((one) => {
      const target = one.given.get("Target") ?? "";
      if (!target.startsWith("#")) return [];
      const held = plain(target.slice(1));
      const moved = change(held);
      return moved === held ? [] : [tagEdit(one, { Target: `#${encodeURI(moved)}` })];
    });
    if (edits.length > 0) writePart(parts, part, edited(xml, edits));
  }
}
