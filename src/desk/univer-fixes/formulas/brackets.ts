import { LexerTreeBuilder } from "@univerjs/preset-sheets-core";
import type { Fix } from "../fix";

/** What the grid's reader of formulas remembers of square brackets. */
interface Reading {
  _resetTemp(): void;
  _squareBracketState: number;
  _tableBracketState: boolean;
}

const reading = LexerTreeBuilder.prototype as unknown as Reading;

/** Each formula is read from its beginning, whatever brackets an earlier one left open. */
export const brackets: Fix = {
  name: "brackets",
  wrong: "After a formula with a square bracket that is not closed, the grid can read no formula any more.",
  seen: "0.25.1",
  members: ({ injector }) => [
    ["LexerTreeBuilder", reading, "_resetTemp"],
    ...["_squareBracketState", "_tableBracketState"].map((name): [string, object, string] => [
      "LexerTreeBuilder",
      injector.get(LexerTreeBuilder),
      name,
    ]),
  ],
  mend() {
    const { _resetTemp } = reading;
    reading._resetTemp = function () {
      _resetTemp.call(this);
      this._squareBracketState = 0;
      this._tableBracketState = false;
    };
  },
};
