import { fromBase64 } from "./base64";
import type { Picture } from "./host";
import { type Scratch, same } from "./scratch";

/** Two pixels wide, one high: one brown, one blue-green. */
const PNG = "iVBORw0KGgoAAAANSUhEUgAAAAIAAAABCAIAAAB7QOjdAAAAD0lEQVR42mNYlihlOr0fAAiUAn335X2GAAAAAElFTkSuQmCC";

const picture = ({ at }: Scratch, changes: Partial<Picture> = {}): Picture => ({
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

const shown = async ({ host, sheet }: Scratch) => (await host.pictures(sheet)).map(kept);

export const PICTURE_CHECKS = {
  "a placed picture is listed with its place, size and words": async (scratch: Scratch) => {
    same(await shown(scratch), []);
    await scratch.host.placePicture(picture(scratch));
    same(await shown(scratch), [kept(picture(scratch))]);
  },
  "a picture of the same name is replaced": async (scratch: Scratch) => {
    const second = picture(scratch, { at: scratch.at("B2"), width: 90, alternative: "Moved." });
    await scratch.host.placePicture(picture(scratch));
    await scratch.host.placePicture(second);
    same(await shown(scratch), [kept(second)]);
  },
  "a picture of another name stays": async (scratch: Scratch) => {
    const other = picture(scratch, { name: "Canfall other picture", at: scratch.at("A1") });
    await scratch.host.placePicture(other);
    await scratch.host.placePicture(picture(scratch));
    await scratch.host.removePicture(scratch.sheet, picture(scratch).name);
    same(await shown(scratch), [kept(other)]);
  },
  "a removed picture can be placed again as it was listed": async (scratch: Scratch) => {
    const { host, sheet } = scratch;
    await host.placePicture(picture(scratch));
    const [listed] = await host.pictures(sheet);
    await host.removePicture(sheet, listed!.name);
    same(await shown(scratch), []);
    await host.placePicture(listed!);
    same(await shown(scratch), [kept(picture(scratch))]);
  },
};
