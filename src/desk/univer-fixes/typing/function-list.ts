import { IShortcutService, KeyCode } from "@univerjs/preset-sheets-core";
import type { Fix } from "../fix";

const OF_LIST = "sheet.formula-embedding-editor.search_function.";
const TAKES = [KeyCode.ENTER, KeyCode.TAB];
/** A key that goes on with the name of a function, or types nothing. */
const IN_NAME = /^([\w.]|.{2,})$/u;

/** Enter and Tab take a function from the list only as long as its name is what is typed. */
export const functionList: Fix = {
  name: "function-list",
  wrong:
    "The list of functions stays for 300 ms after the last key, so that Enter after a closing bracket puts a function of the list in the place of the one that was typed.",
  seen: "0.25.1",
  members: ({ injector }) => [["IShortcutService", injector.get(IShortcutService), "registerShortcut"]],
  mend({ injector }) {
    const shortcuts = injector.get(IShortcutService);
    const { registerShortcut } = shortcuts;
    let inName = true;
    shortcuts.registerShortcut = (item) => {
      if (!item.id.startsWith(OF_LIST)) return registerShortcut.call(shortcuts, item);
      inName = true; // a list that is shown anew is of what is typed now
      const takes = TAKES.includes(item.binding as KeyCode);
      return registerShortcut.call(shortcuts, { ...item, preconditions: () => !takes || inName });
    };
    document.addEventListener(
      "keydown",
      ({ key }) => {
        if (!IN_NAME.test(key)) inName = false;
      },
      { capture: true },
    );
  },
};
