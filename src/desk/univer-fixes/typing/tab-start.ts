import { ICommandService, Rectangle } from "@univerjs/core";
import {
  type ISetSelectionsOperationParams,
  MoveSelectionEnterAndTabCommand,
  SetSelectionsOperation,
  SheetsSelectionsService,
} from "@univerjs/preset-sheets-core";
import type { Fix } from "../fix";

/** The grid's own store of the cells where lines of entries began, which it does not hand out. */
interface Starts {
  getCurrentBySearch(): unknown;
  addOrUpdate(start: unknown): void;
  remove(): void;
}

const isStarts = (service: unknown): service is Starts =>
  typeof service === "object" && service !== null && "getCurrentBySearch" in service;

/** Only Tab and Enter themselves leave the column in force. */
export const tabStart: Fix = {
  name: "tab-start",
  wrong:
    "Enter goes back to the column where the first Tab was pressed, also after somebody has clicked elsewhere meanwhile.",
  seen: "0.25.1",
  members: ({ injector }) => [
    ["MoveSelectionEnterAndTabCommand", MoveSelectionEnterAndTabCommand, "handler"],
    ["SheetsSelectionsService", injector.get(SheetsSelectionsService), "getCurrentLastSelection"],
  ],
  mend({ injector }) {
    const commands = injector.get(ICommandService);
    let start: unknown;
    let moving = false;
    const chosen = ({ type, selections }: ISetSelectionsOperationParams) => {
      const [now, then] = [injector.get(SheetsSelectionsService).getCurrentLastSelection(), selections.at(-1)];
      return type !== undefined || !now || !then || !Rectangle.equals(now.range, then.range);
    };
    const starts: Starts = {
      getCurrentBySearch: () => start,
      addOrUpdate: (one) => {
        start = one;
      },
      remove: () => {
        start = undefined;
      },
    };
    const { id: next, handler } = MoveSelectionEnterAndTabCommand;
    MoveSelectionEnterAndTabCommand.handler = (accessor, params) => {
      const get = ((...asked: Parameters<typeof accessor.get>) => {
        const service: unknown = accessor.get(...asked);
        return isStarts(service) ? starts : service;
      }) as typeof accessor.get;
      return handler({ ...accessor, get }, params);
    };
    commands.beforeCommandExecuted(({ id, params }) => {
      if (id === next) moving = true;
      if (id === SetSelectionsOperation.id && !moving && chosen(params as ISetSelectionsOperationParams))
        start = undefined;
    });
    commands.onCommandExecuted(({ id }) => {
      if (id === next) moving = false;
    });
  },
};
