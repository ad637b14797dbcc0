import type { Area } from "../../../cells/area";
import { cellAt, reference } from "../../../cells/box";
import type { Host } from "../../../hosts/host";
import type { Act } from "../../workbook/act";
import type { Png } from "./png";

const alike = (one: Uint8Array, other: Uint8Array) =>
  one.length === other.length && one.every((byte, index) => byte === other[index]);

/** Places a picture with its top left corner at a cell, in place of the last of that name on the sheet. */
export async function placePicture(host: Host, at: Area, png: Png, name: string, alternative: string): Promise<Act> {
  const cell = cellAt(at, 0, 0);
  const there = async () => (await host.pictures(cell.sheet)).find((picture) => picture.name === name);
  const before = await there();
  const { bytes, width, height } = png;
  await host.placePicture({ name, png: bytes, alternative, at: cell, width, height });
  const after = await there();
  return {
    label: `picture in ${reference(cell)}`,
    taken: before ? "The picture before it is back" : "The picture is taken out",
    doubt: "The picture was changed since. Take it out all the same?",
    untouched: async () => {
      const now = await there();
      return now !== undefined && after !== undefined && alike(now.png, after.png);
    },
    takeBack: async () => {
      if (before) await host.placePicture(before);
      else await host.removePicture(cell.sheet, name);
    },
  };
}

/** Places a picture at the selected cell, and says where it is. */
export async function placeAtSelection(
  host: Host,
  keep: (act: Act) => void,
  picture: { png: Png; name: string; alternative: string },
): Promise<string> {
  const at = cellAt(await host.selection(), 0, 0);
  keep(await placePicture(host, at, picture.png, picture.name, picture.alternative));
  return `The picture is at ${reference(at)}. Undo takes it out`;
}
