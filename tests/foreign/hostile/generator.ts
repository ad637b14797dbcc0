import { zipSync } from "fflate";
import { foreignParts } from "../foreign-parts";
import { FAR } from "./far";
import { type Kind, PART_KINDS } from "./kinds";
import { HOSTILE, type HostileFile } from "./known";
import { NEWER_KINDS } from "./newer";
import type { Draw } from "./pieces";
import { WIDE } from "./wide";

/** Mulberry32: the same files in each run. */
function drawing(seed: number): Draw {
  let state = seed;
  return (most) => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return Math.floor((((t ^ (t >>> 14)) >>> 0) / 4294967296) * most);
  };
}

const ARCHIVE_KINDS: Kind[] = [
  [
    "a cut archive",
    (draw) => {
      const file = zipSync(foreignParts());
      return file.slice(0, draw(file.length));
    },
  ],
  [
    "an archive with bytes turned",
    (draw) => {
      const file = zipSync(foreignParts());
      for (let i = 0; i < 20; i += 1) file[draw(file.length)] = draw(256);
      return file;
    },
  ],
  [
    "an archive that grows without end",
    (draw) =>
      zipSync(
        { ...foreignParts(), "xl/media/big.bin": new Uint8Array(150_000_000 + draw(100) * 1_000_000) },
        { level: 9 },
      ),
  ],
  ["no archive", (draw) => Uint8Array.from({ length: draw(3000) }, () => draw(256))],
];
const KINDS = [...PART_KINDS, ...ARCHIVE_KINDS, ...NEWER_KINDS];

const DRAWN_UP_TO = 400;
const LARGE = [...WIDE, ...FAR];

/** How many there are. */
export const HOSTILE_COUNT = DRAWN_UP_TO + LARGE.length;

/**
 * A file that no program should write: the known ones come first, then kinds of damage drawn again and again, and from
 * 400 on what covers whole sheets or lies far out.
 */
export function hostileFile(number: number, seed = 16): HostileFile {
  const large = LARGE[number - DRAWN_UP_TO];
  if (large) return { wrong: large[0], file: zipSync(large[2]()) };
  const known = HOSTILE[number];
  if (known) return { wrong: known[0], file: zipSync(known[1]()) };
  const i = number - HOSTILE.length;
  const [wrong, make] = KINDS[i % KINDS.length]!;
  return { wrong: `${wrong} (${i})`, file: make(drawing(seed * 10_000 + i)) };
}
