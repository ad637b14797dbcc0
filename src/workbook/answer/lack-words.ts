/** What the sheets say of a run time that cannot be given, with what to do about it. */
const INSTEAD: Readonly<Record<string, string>> = {
  "a can is dry":
    "a can is dry, and no run time is long enough for it. Mend its head and test again, or base the run time on the low quarter",
  "choose what the run time is based on":
    "choose what the run time is based on: the driest can, the low quarter or a share of the pots",
  "fix the readings: see Cans": "fix the readings first (see Cans)",
  "every can is dry": "every can is dry. Were the heads on? Type x for a can that was not read",
};

/** Why there is no run time, from what the sheet Run time says instead of it. */
export const lackWords = (said: string) => (/^needs /.test(said) ? `the run time ${said}` : (INSTEAD[said] ?? said));

/** Longer than a day is no setting; as Block takes a run of today. */
export const MOST_MINUTES = 1440;

/** Why there is no setting: the run time is longer than a day, or there is none. */
export function lackOf(minutes: number | undefined, said: string): string {
  if (minutes === undefined || minutes <= MOST_MINUTES) return lackWords(said || "needs the sheet Run time");
  return `the run time would be ${Math.round(minutes)} min, over a day. Look at the driest can and its head, or base the run time on the low quarter`;
}
