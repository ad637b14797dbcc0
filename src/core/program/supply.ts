import type { Job } from "./jobs";
import type { Task } from "./task";

const MINUTES_AN_HOUR = 60;
/** Litres that rounding may add up to. */
const ROUNDING_L = 1e-6;

/** The water of a tank, minute by minute: what a minute uses must be there when it begins. */
export class Supply {
  readonly #inflow: number;
  readonly #volume: number;
  /** Least water that is left in any minute from here on */
  readonly #spare: Float64Array;
  readonly #use: Float64Array;

  /** Minutes after which everything is there, however it is used. */
  static longestWait({ jobs, tank }: Task): number {
    const litres = jobs.reduce((sum, job) => sum + job.litres, 0);
    const lacking = Math.max(0, litres - (tank?.volume ?? 0));
    return lacking === 0 ? 0 : Math.ceil((lacking * MINUTES_AN_HOUR) / (tank?.refill ?? 0));
  }

  constructor(tank: { volume: number; refill: number }, minutes: number) {
    this.#volume = tank.volume;
    this.#inflow = tank.refill / MINUTES_AN_HOUR;
    this.#use = new Float64Array(minutes);
    this.#spare = new Float64Array(minutes + 1).fill(Infinity);
    this.#refresh();
  }

  clear(): void {
    this.#use.fill(0);
    this.#refresh();
  }

  /** The first minute from `from` on at which the job's next pulse finds its water. */
  earliest(job: Job, from: number): number {
    let start = from;
    while (start + job.run < this.#use.length && !this.#enough(job, start)) start += 1;
    return start;
  }

  take(job: Job, from: number): void {
    for (let i = 0; i < job.run; i += 1) this.#use[from + i] = (this.#use[from + i] as number) + litresOf(job, i);
    this.#refresh();
  }

  #enough(job: Job, start: number): boolean {
    let taken = 0;
    for (let i = 0; i < job.run; i += 1) {
      taken += litresOf(job, i);
      if ((this.#spare[start + i] as number) + ROUNDING_L < taken) return false;
    }
    return true;
  }

  #refresh(): void {
    let used = 0;
    for (let i = 0; i < this.#use.length; i += 1) {
      used += this.#use[i] as number;
      this.#spare[i] = this.#volume + this.#inflow * i - used;
    }
    for (let i = this.#use.length - 1; i >= 0; i -= 1) {
      this.#spare[i] = Math.min(this.#spare[i] as number, this.#spare[i + 1] as number);
    }
  }
}

/** Water of one minute of a pulse [L]; the last may be a part. */
function litresOf({ flow, minutes }: Job, minute: number): number {
  return (flow / 1000 / MINUTES_AN_HOUR) * Math.min(1, minutes - minute);
}
