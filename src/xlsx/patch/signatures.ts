import { relationsOf } from "../parts/relations";
import { removeParts } from "../parts/remove-parts";
import type { Parts } from "./write-part";

/** Relations that lead to the list of digital signatures of a file, and from there to each (ISO/IEC 29500-2). */
const SIGNING = /\/digital-signature\/(origin|signature|certificate)$/;

export const isSigned = (parts: Parts): boolean =>
  relationsOf(parts, "").some(({ type, part }) => SIGNING.test(type) && parts.has(part));

/** Takes the digital signatures out, which are of the file as it was. */
export function removeSignatures(parts: Parts): void {
  removeParts(parts, "", ({ type }) => SIGNING.test(type));
}

const sameBytes = (one: Uint8Array, other: Uint8Array | undefined): boolean =>
  one === other || (one.length === other?.length && one.every((byte, i) => byte === other[i]));

/** Whether any part came, went or changed. */
export const differ = (some: Parts, others: Parts): boolean =>
  some.size !== others.size || [...some].some(([part, bytes]) => !sameBytes(bytes, others.get(part)));
