import { type Fitted, RATIOS, type Setting } from "./setting";

/** Overlaps of heads that are all sound, one for each throw that is tried. */
export function plain(setting: Setting): Fitted[] {
  return RATIOS.map((ratio) => setting.fit(setting.alike(ratio), setting.shapes, ratio, 0));
}
