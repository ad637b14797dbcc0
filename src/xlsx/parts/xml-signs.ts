import { InputError } from "../../core/errors";

/** A part that is not well formed, with the reason. */
export const malformed = (why: string) => new InputError("the file", "hold well-formed parts", why);

export const isSpace = (code: number) => code === 32 || code === 9 || code === 10 || code === 13;

/** Where the name that starts at `start` ends. */
export function nameEnd(xml: string, start: number): number {
  let at = start;
  while (at < xml.length && !isSpace(xml.charCodeAt(at)) && xml[at] !== "/" && xml[at] !== ">") at += 1;
  return at;
}
