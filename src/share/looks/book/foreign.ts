import type { XmlElement } from "../../../xlsx/parts/xml-tree";

/** The first element below one that only some programs read; what a program adds in its own list is shown by no other part. */
export function foreignIn(
  { children, space }: XmlElement,
  isOwn: (space: string) => boolean = (one) => one === space,
  apart: readonly string[] = ["extLst"],
): XmlElement | undefined {
  for (const child of children) {
    if (apart.includes(child.name)) continue;
    const found = isOwn(child.space) ? foreignIn(child, isOwn, apart) : child;
    if (found) return found;
  }
  return undefined;
}

const DRAWINGS = /^http:\/\/(schemas\.openxmlformats\.org\/drawingml\/2006|purl\.oclc\.org\/ooxml\/drawingml)\/\w+$/;
/** Whether an element is one of the standard's drawings and charts. */
export const isDrawn = (space: string): boolean => DRAWINGS.test(space);
