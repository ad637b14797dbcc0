import { Worksheet } from "@univerjs/core";
import type { Fix } from "../fix";

const sheet = Worksheet.prototype;

/** Rows and columns that are inserted look like the cells beside them without what conditional formats add there. */
export const insertedLooks: Fix = {
  name: "inserted-looks",
  wrong: "Rows and columns that are inserted keep for ever what a conditional format shows in the cells beside them.",
  seen: "0.25.1",
  members: () => ["getCellWithFilteredInterceptors", "getCellRaw"].map((name) => ["Worksheet", sheet, name]),
  mend() {
    sheet.getCellWithFilteredInterceptors = sheet.getCellRaw;
  },
};
