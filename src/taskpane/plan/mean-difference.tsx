import { figure } from "../parts/figure";

/** Difference of the means, as a share of the computed one, from which it is said. */
const SAID_FROM = 0.2;

const LESS =
  "heads that give less than typed (run a bucket, read a pressure), blocked nozzles, a throw that carries water past the bed, wind and sun; or a wrong entry of minutes, can opening or throw";
const MORE =
  "heads that give more than typed, water from another bed or valve, leaves that drip into cans; or a wrong entry of minutes, can opening or flow";

/** Why the cans may have caught another mean than the heads of the audit would give; "" where both are near each other. */
export function meanDifference(computed: number, caught: number): string {
  const share = caught / computed - 1;
  if (!(Math.abs(share) > SAID_FROM)) return "";
  const [how, why] = share < 0 ? ["less", LESS] : ["more", MORE];
  return `The heads as typed would give ${figure(computed)} mm/h, the cans caught ${figure(caught)} mm/h: ${Math.round(Math.abs(100 * share))} % ${how}. What could explain it: ${why}.`;
}

/** Says so where it is so. */
export function MeanDifference({ computed, caught }: { computed: number; caught: number }) {
  const words = meanDifference(computed, caught);
  return words ? <p className="note">{words}</p> : null;
}
