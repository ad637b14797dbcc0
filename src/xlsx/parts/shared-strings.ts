import { isMain } from "./namespaces";
import { plainText } from "./sheet-cells";
import { readXml } from "./xml";

const ITEM = 2;

/** The texts that cells share, by their number; sounds that are written beside a text are left out. */
export function sharedStrings(xml: string): string[] {
  const texts: string[] = [];
  let depth = 0;
  let text = "";
  let inside = false;
  let sound = 0;
  readXml(xml, {
    open(tag) {
      depth += 1;
      if (!isMain(tag.uri)) return;
      if (depth === ITEM && tag.local === "si") text = "";
      else if (tag.local === "rPh") sound = depth;
      else if (tag.local === "t") inside = sound === 0;
    },
    close(tag) {
      if (depth === ITEM && tag.local === "si" && isMain(tag.uri)) texts.push(plainText(text));
      if (depth === sound) sound = 0;
      inside = false;
      depth -= 1;
    },
    text(part) {
      if (inside) text += part;
    },
  });
  return texts;
}
