/** What one valve waters in one go. */
export interface Block {
  /** As people call it; no two blocks the same */
  name: string;
  /** Area of the bed [m²], more than 0 */
  area: number;
  /** Mean application rate [mm/h], more than 0 */
  rate: number;
  /** What the unevenness asks for, such as a scheduling coefficient, more than 0 */
  multiplier: number;
  /** Net depth wanted in each pot [mm], 0 or more; at 0 the block is not watered */
  depth: number;
  /** Depth that the mix takes up before it drains [mm], more than 0; left out: one pulse */
  takeUp?: number;
  /** Least rest between two pulses [min], 0 or more; left out: 0 */
  rest?: number;
  /** Flow while it runs [L/h], more than 0; left out: area times rate, which counts no water beside the bed */
  flow?: number;
}

/** Hours in which water may run. */
export interface Window {
  /** Minutes after midnight, a whole number from 0 to 1439 */
  start: number;
  /** Minutes after midnight, a whole number from 0 to 1440; at or before the start it is on the next day */
  end: number;
}

/** A tank that is full when the first window begins. */
export interface Tank {
  /** [L], more than 0 */
  volume: number;
  /** Water that comes in, all the time [L/h], 0 or more */
  refill: number;
}

/** Blocks that share a pump and a day. */
export interface Program {
  blocks: readonly Block[];
  /** Flow of the pump at the pressure that the heads need [L/h], more than 0 */
  pump: number;
  /** In the order in which they come, the first one beginning the day; all within 24 hours */
  windows: readonly Window[];
  /** Pairs of blocks, by name, that may not run together */
  apart?: readonly (readonly [string, string])[];
  /** Time from the end of one valve to the start of the next that takes its place [s], from 0 to 3600; left out: 0 */
  changeOver?: number;
  /** Most water a day, of the licence or the meter [L], more than 0; left out: no limit */
  limit?: number;
  tank?: Tank;
  /** Smallest step of the run time that the controller takes [min], from 1/60 to 5; left out: 1 */
  step?: number;
}

/** One pulse of a schedule. */
export interface Run {
  block: string;
  /** Which pulse of the block, from 1 */
  pulse: number;
  /** Whole minutes after the midnight before the first window; from 1440 on it is the next day */
  start: number;
  /** [min] */
  minutes: number;
}

/** All pulses of a day. */
export type Schedule = readonly Run[];
