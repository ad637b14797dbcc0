import type { Forgery } from "./kinds";

const u16 = (bytes: Uint8Array, at: number) => bytes[at]! | (bytes[at + 1]! << 8);
const ending = (bytes: Uint8Array) => bytes.length - 22;
function patched(bytes: Uint8Array, changes: readonly (readonly [number, number])[]): Uint8Array {
  const copy = bytes.slice();
  for (const [at, value] of changes) copy[at] = value;
  return copy;
}
const joined = (...all: Uint8Array[]) => new Uint8Array(Buffer.concat(all));
const PACKED: readonly (readonly [string, (bytes: Uint8Array) => Uint8Array])[] = [
  ["an archive with bytes in front", (bytes) => joined(new Uint8Array(64), bytes)],
  ["an archive behind another", (bytes) => joined(bytes, bytes)],
  [
    "an archive with a second end in its comment",
    (bytes) => {
      const end = bytes.slice(ending(bytes));
      const first = patched(end, [[20, 22]]);
      return joined(bytes.slice(0, ending(bytes)), first, patched(end, [[20, 7]]));
    },
  ],
  [
    "an archive whose list holds one part more than it counts",
    (bytes) => {
      const end = ending(bytes);
      const count = u16(bytes, end + 10) - 1;
      return patched(bytes, [
        [end + 8, count & 255],
        [end + 10, count & 255],
      ]);
    },
  ],
  ["an archive with bytes behind", (bytes) => joined(bytes, new Uint8Array(10))],
];

/** Ways to forge the archive that a copy is packed in. */
export const PACKED_KINDS: readonly Forgery[] = PACKED.map(([kind, packed]) => ({ kind, make: () => {}, packed }));
