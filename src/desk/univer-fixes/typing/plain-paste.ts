import { PREDEFINED_HOOK_NAME_PASTE, SheetClipboardService } from "@univerjs/preset-sheets-core";
import type { Fix } from "../fix";

interface Clipboard {
  legacyPaste(html?: string, text?: string, files?: File[]): Promise<boolean>;
  _pasteHTML(html: string, manner: string): Promise<boolean>;
}

const clipboard = SheetClipboardService.prototype as unknown as Clipboard;

/** Pastes such text as values alone. */
export const plainPaste: Fix = {
  name: "plain-paste",
  wrong: "Plain text of several cells that is pasted takes the fill, borders and format from the cells.",
  seen: "0.25.1",
  members: () => ["legacyPaste", "_pasteHTML"].map((name) => ["SheetClipboardService", clipboard, name]),
  mend() {
    const { legacyPaste, _pasteHTML } = clipboard;
    let plain = false;
    clipboard.legacyPaste = function (html, text, files) {
      plain = !html && !files;
      try {
        return legacyPaste.call(this, html, text, files);
      } finally {
        plain = false;
      }
    };
    clipboard._pasteHTML = function (html, manner) {
      return _pasteHTML.call(this, html, plain ? PREDEFINED_HOOK_NAME_PASTE.SPECIAL_PASTE_VALUE : manner);
    };
  },
};
