import { fromBase64 } from "../base64";
import type { Picture } from "../host";
import { same, type TrialSheet } from "./trial-sheet";

/** Two pixels wide, one high: one brown, one blue-green. */
const PNG = "iVBORw0KGgoAAAANSUhEUgAAAAIAAAABCAIAAAB7QOjdAAAAD0lEQVR42mNYlihlOr0fAAiUAn335X2GAAAAAElFTkSuQmCC";

const picture = ({ at }: TrialSheet, changes: Partial<Picture> = {}): Picture => ({
  name: "Canfall test picture",
  png: fromBase64(PNG),
  alternative: "A brown pixel left of a blue-green one.",
  at: at("C4"),
  width: 120,
  height: 60,
  ...changes,
});

/** What of a picture every host keeps; sizes to the pixel, since a host may count in other units. */
const kept = ({ name, alternative, at, width, height }: Picture) => ({
  name,
  alternative,
  at,
  width: Math.round(width),
  height: Math.round(height),
});

const picturesShown = async ({ host, sheet }: TrialSheet) => (await host.pictures(sheet)).map(kept);

export const PICTURE_CHECKS = {
  "a placed picture is listed with its place, size and words": async (trial: TrialSheet) => {
    same(await picturesShown(trial), []);
    await trial.host.placePicture(picture(trial));
    same(await picturesShown(trial), [kept(picture(trial))]);
  },
  "a picture of the same name is replaced": async (trial: TrialSheet) => {
    const second = picture(trial, { at: trial.at("B2"), width: 90, alternative: "Moved." });
    await trial.host.placePicture(picture(trial));
    await trial.host.placePicture(second);
    same(await picturesShown(trial), [kept(second)]);
  },
  "a picture of another name stays": async (trial: TrialSheet) => {
    const other = picture(trial, { name: "Canfall other picture", at: trial.at("A1") });
    await trial.host.placePicture(other);
    await trial.host.placePicture(picture(trial));
    await trial.host.removePicture(trial.sheet, picture(trial).name);
    same(await picturesShown(trial), [kept(other)]);
  },
  "a removed picture can be placed again as it was listed": async (trial: TrialSheet) => {
    const { host, sheet } = trial;
    await host.placePicture(picture(trial));
    const [listed] = await host.pictures(sheet);
    await host.removePicture(sheet, listed!.name);
    same(await picturesShown(trial), []);
    await host.placePicture(listed!);
    same(await picturesShown(trial), [kept(picture(trial))]);
  },
};
