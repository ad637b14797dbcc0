import { attributesOf, malformed, readXml, type XmlTag } from "./xml";

/** An element of a part with the place of its tags in it. */
export interface XmlElement {
  /** Name without prefix. */
  name: string;
  /** Prefix with its colon, or "". */
  prefix: string;
  space: string;
  /** All attributes by their names with prefix, as they are written. */
  raw: ReadonlyMap<string, string>;
  /** Attributes in no namespace. */
  given: ReadonlyMap<string, string>;
  /** An attribute in a namespace that `wanted` accepts; undefined where there is none, refused where there are two. */
  spaced(wanted: (space: string) => boolean, name: string): string | undefined;
  children: XmlElement[];
  /** Its own text, without that of its children. */
  text: string;
  start: number;
  /** Where its opening tag ends and its closing tag starts; both are `end` where it is one empty tag. */
  openEnd: number;
  closeStart: number;
  end: number;
}

function elementOf(tag: XmlTag, start: number, openEnd: number): XmlElement {
  return {
    name: tag.local,
    prefix: tag.prefix === "" ? "" : `${tag.prefix}:`,
    space: tag.uri,
    raw: new Map(Object.values(tag.attributes).map((one) => [one.name, one.value])),
    given: attributesOf(tag),
    spaced: (wanted, name) => {
      const found = Object.values(tag.attributes).filter(
        (one) => one.local === name && one.prefix !== "" && wanted(one.uri),
      );
      if (found.length > 1) throw malformed("an attribute given twice");
      return found[0]?.value;
    },
    children: [],
    text: "",
    start,
    openEnd,
    closeStart: openEnd,
    end: openEnd,
  };
}

/** A part as a tree of its elements; inside those that `leaf` names only the place is kept. */
export function xmlTree(xml: string, leaf: (name: string) => boolean = () => false): XmlElement {
  const path: XmlElement[] = [];
  let root: XmlElement | undefined;
  let skipped = 0;
  readXml(xml, {
    open(tag, start, end) {
      const parent = path.at(-1);
      if (skipped > 0 || (parent && leaf(parent.name))) {
        skipped += 1;
        return;
      }
      const element = elementOf(tag, start, end);
      if (parent) parent.children.push(element);
      else root = element;
      path.push(element);
    },
    close(_, start, end) {
      if (skipped > 0) {
        skipped -= 1;
        return;
      }
      const element = path.pop()!;
      element.closeStart = start;
      element.end = end;
    },
    text(text) {
      const element = path.at(-1);
      if (skipped === 0 && element) element.text += text;
    },
  });
  return root!;
}

type SpaceTest = (space: string) => boolean;

/** The children of a name in a namespace. */
export const childrenOf = (parent: XmlElement | undefined, space: SpaceTest, name: string): XmlElement[] =>
  parent?.children.filter((one) => one.name === name && space(one.space)) ?? [];

export const childOf = (parent: XmlElement | undefined, space: SpaceTest, name: string): XmlElement | undefined =>
  childrenOf(parent, space, name)[0];

/** All elements below one, in their order. */
export function* within(parent: XmlElement): Generator<XmlElement> {
  for (const child of parent.children) {
    yield child;
    yield* within(child);
  }
}

const YES = ["1", "true", "on"];
/** Whether an attribute says yes as XML Schema writes it (W3C, XML Schema Part 2, 3.2.2), or as older Office files do. */
export const isOn = (given: string | undefined): boolean => YES.includes(given ?? "");
