/** How much a bed may depart from an overlap of equal heads: each a standard deviation. */
export interface Setting {
  /** Output of a head over that of a sound one. */
  output: number;
  /** Profile, over its rate. */
  profile: number;
  /** Smooth unevenness, over the rate. */
  field: number;
  /** Error of a reading, over the rate. */
  reading: number;
}

const OUTPUTS = [0.03, 0.06, 0.11];
const PROFILES = [0.08, 0.2, 0.5];
const FIELDS = [0, 0.015, 0.04];
const READINGS = [0.04, 0.055, 0.085];

/** The setting at which models are compared first. */
export const MIDDLE: Setting = { output: 0.08, profile: 0.3, field: 0.04, reading: 0.055 };

/** Every combination; the readings decide between them. */
export const SETTINGS: readonly Setting[] = OUTPUTS.flatMap((output) =>
  PROFILES.flatMap((profile) =>
    FIELDS.flatMap((field) => READINGS.map((reading) => ({ output, profile, field, reading }))),
  ),
);
