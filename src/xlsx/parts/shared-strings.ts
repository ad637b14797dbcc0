import { isPieceOfText, OneText, plainText, refused } from "./cell-value";
import { isMain } from "./namespaces";
import { readXml } from "./xml";

const ITEM = 2;

/** The texts that cells share, by their number; sounds that are written beside a text are left out. */
export const sharedStrings = (xml: string): string[] => sharedTexts(xml).texts;

/** The same with the numbers of those that have pieces with looks of their own. */
export function sharedTexts(xml: string): { texts: string[]; rich: ReadonlySet<number> } {
  const texts: string[] = [];
  const rich = new Set<number>();
  const path: string[] = [];
  const one = new OneText();
  let depth = 0;
  let text = "";
  let inside = false;
  let sound = 0;
  readXml(xml, {
    open(tag) {
      depth += 1;
      const inItem = depth > ITEM;
      if (inItem && !(isMain(tag.uri) && isPieceOfText(tag.local, path.at(-1)!))) {
        throw refused("hold texts of nothing but text", tag.name, `text ${texts.length + 1}`);
      }
      if (inItem) one.open(tag.local, path.at(-1)!);
      path.push(tag.local);
      if (!isMain(tag.uri)) return;
      if (depth === ITEM && tag.local === "si") {
        text = "";
        one.begin();
      } else if (tag.local === "rPh") sound = depth;
      else if (tag.local === "rPr") rich.add(texts.length);
      else if (tag.local === "t") inside = sound === 0;
    },
    close(tag) {
      if (depth === ITEM && tag.local === "si" && isMain(tag.uri)) texts.push(plainText(text));
      if (depth === sound) sound = 0;
      inside = false;
      path.pop();
      depth -= 1;
    },
    text(part) {
      if (inside) text += part;
    },
  });
  return { texts, rich };
}
