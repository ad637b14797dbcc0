import { aboveZero, positive, zeroOrMore } from "../checks";
import { InputError } from "../errors";

/** A run time cut into equal pulses with rests between them. */
export interface Pulses {
  /** How many pulses, a whole number from 1 */
  number: number;
  /** Length of each [min] */
  minutes: number;
  /** From the start of the first to the end of the last [min] */
  elapsed: number;
}

/** More pulses than any controller takes. */
const MOST_PULSES = 1000;
/** A count that is over a whole number by no more than this is that number. */
const ROUNDING = 1e-9;

/**
 * Pulses of a run time, none deeper than the mix takes up before it drains.
 *
 *     n = r t / 60 / u, rounded up;  each t / n;  in all t + (n - 1) w
 *
 * t: run time [min]; r: mean application rate [mm/h]; u: depth per pulse [mm]; w: rest [min]
 *
 * @param runTime Run time [min], more than 0
 * @param rate Mean application rate [mm/h], more than 0
 * @param takeUp Depth that the mix takes up before it drains [mm], more than 0
 * @param rest Rest between two pulses [min], 0 or more
 * @returns Number, minutes of each and minutes from start to end; one pulse where the mix takes up the whole depth
 * @throws InputError if a value is out of its range, or more than 1000 pulses would be needed
 * @source own reasoning; for cyclic watering: Fare, Gilliam, Keever and Olive, HortScience (1994)
 * @example pulses(73, 12, 5, 30) // { number: 3, minutes: 73 / 3, elapsed: 133 }
 */
export function pulses(runTime: number, rate: number, takeUp: number, rest: number): Pulses {
  const minutes = aboveZero("run_time", runTime, "min");
  const depth = (minutes * aboveZero("rate", rate, "mm/h")) / 60;
  const pause = zeroOrMore("rest", rest, "min");
  const number = Math.max(1, Math.ceil(depth / positive("take_up", takeUp, "mm") - ROUNDING));
  if (number > MOST_PULSES) {
    throw new InputError("take_up", `be deeper (at most ${MOST_PULSES} pulses for ${depth} mm)`, takeUp);
  }
  return { number, minutes: minutes / number, elapsed: minutes + (number - 1) * pause };
}
