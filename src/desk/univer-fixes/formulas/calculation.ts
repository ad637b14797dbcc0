import { AsyncLock, CanceledError, ICommandService, type Injector } from "@univerjs/core";
import {
  IActiveDirtyManagerService,
  ICalculateFormulaService,
  OtherFormulaMarkDirty,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationResultMutation,
  SetFormulaCalculationStartMutation,
  SetFormulaCalculationStopMutation,
  SetRangeValuesMutation,
  SetTriggerFormulaCalculationStartMutation,
} from "@univerjs/preset-sheets-core";
import type { DeskCalculation } from "../../../hosts/desk/grid";
import { pause } from "../../../hosts/pause";
import type { Fix } from "../fix";
import { type Changes, type Trigger, triggerMembers, triggerOf } from "./trigger";

const LIMIT_MS = 60_000;
/** After how long figures that are not up to date yet are shown as such. */
const LATE_MS = 1000;
const LOOK_MS = 500;
/** A calculation that has not gone on in so many looks is given up: 5 s in which the page had nothing else to do. */
const MOST_LOOKS = 10;
const POLL_MS = 10;
/** How long no key is pressed in the grid before it calculates: after a key that ends an entry at once. */
const REST_MS = { ended: 0, typing: 400 };
const ENDING = new Set(["Enter", "Tab"]);

type Cells = Record<number, Record<number, unknown> | undefined>;
type Units = Record<string, Record<string, Cells | undefined> | undefined>;

/** Whether a change of a cell is more than one of its looks. */
const isContent = (cell: unknown): boolean =>
  cell === null || (typeof cell === "object" && ["v", "f", "si", "p"].some((part) => part in cell));

/** Changes that leave every cell where it is. */
const IN_PLACE = new Set([
  SetRangeValuesMutation.id,
  OtherFormulaMarkDirty.id,
  SetTriggerFormulaCalculationStartMutation.id,
]);

/** Runs the grid's calculations one after the other, each once typing rests. */
class Calculation implements DeskCalculation {
  private readonly commands: ICommandService;
  private readonly trigger: Trigger;
  private waiting: Changes | null = null;
  private running = false;
  private held = false;
  private starting = false;
  private restUntil = 0;
  /** What was entered, and whether cells moved, since the running calculation began. */
  private entered: [unit: string, sheet: string, cells: Cells][] = [];
  private moved = false;
  /** Since when figures have been out of date [ms]; null where they follow all that was entered. */
  private behind: number | null = null;
  /** Looks since the running calculation last went on. */
  private stuck = 0;
  private looks = 0;
  private all = false;
  private readonly said = new Map<string, string>();
  private told: (late: boolean, sentences: string[]) => void = () => {};

  constructor(private readonly injector: Injector) {
    this.commands = injector.get(ICommandService);
    this.trigger = triggerOf(injector);
    const never = { get: () => null, set: () => {} };
    Object.defineProperty(this.trigger, "_executionInProgressParams", never);
    const changing = injector.get(IActiveDirtyManagerService);
    this.commands.beforeCommandExecuted(({ id, params }) => this.before(id, params));
    this.commands.onCommandExecuted(({ id, params }, options) => {
      if (id === SetFormulaCalculationNotificationMutation.id)
        this.notified(params as { functionsExecutedState?: number });
      if (id === SetRangeValuesMutation.id) setTimeout(() => this.take());
      if (!this.running || options?.onlyLocal) return;
      if (id === SetRangeValuesMutation.id) {
        const { unitId, subUnitId, cellValue } = params as { unitId: string; subUnitId: string; cellValue?: Cells };
        this.entered.push([unitId, subUnitId, cellValue ?? {}]);
      } else if (!IN_PLACE.has(id) && changing.get(id)) this.moved = true;
    });
  }

  keyPressed(key: string): void {
    this.restUntil = performance.now() + (ENDING.has(key) ? REST_MS.ended : REST_MS.typing);
  }

  async settled(): Promise<void> {
    if (!(await this.settledWithin(LIMIT_MS))) {
      throw new Error(`the grid is still calculating after ${LIMIT_MS / 1000} s`);
    }
  }

  async settledWithin(limit: number): Promise<boolean> {
    const end = Date.now() + limit;
    do {
      await pause(POLL_MS);
      if (Date.now() > end) return false;
    } while (this.isRunning());
    return !this.said.has("failure");
  }

  isRunning(): boolean {
    return this.running || this.waiting !== null || this.trigger._waitingCommandQueue.length > 0;
  }

  hold(): () => void {
    this.held = true;
    return () => {
      this.held = false;
      this.begin();
    };
  }

  failed(reason: string): void {
    this.all = true; // what this calculation was to follow is not known any more
    this.say(
      "failure",
      `Figures are out of date: a calculation ended early (${reason}). The next entry starts it again`,
    );
  }

  say(about: "failure" | "circle" | "kept", sentence: string): void {
    if ((this.said.get(about) ?? "") === sentence) return;
    if (sentence) this.said.set(about, sentence);
    else this.said.delete(about);
    this.tell();
  }

  follow(told: (late: boolean, sentences: string[]) => void): void {
    this.told = told;
    this.tell();
  }

  private tell(): void {
    const late = this.said.has("failure") || (this.behind !== null && performance.now() - this.behind >= LATE_MS);
    this.told(late, [...this.said.values()]);
  }

  /** Looks from time to time whether figures are late and the calculation goes on, until it is done. */
  private look(): void {
    this.looks += 1;
    const asked = this.looks;
    setTimeout(() => {
      if (asked !== this.looks) return;
      if (!this.isRunning()) {
        this.behind = null;
        this.tell();
        return;
      }
      this.stuck += 1;
      if (this.running && this.stuck > MOST_LOOKS) this.giveUp();
      this.tell();
      this.look();
    }, LOOK_MS);
  }

  private giveUp(): void {
    Object.assign(this.injector.get(ICalculateFormulaService), { _executeLock: new AsyncLock() });
    this.running = false;
    this.failed(`no progress in ${(MOST_LOOKS * LOOK_MS) / 1000} s`);
  }

  private before(id: string, params: unknown): void {
    if (id === SetFormulaCalculationStopMutation.id) throw new CanceledError();
    if (id === SetFormulaCalculationResultMutation.id) this.spare((params as { unitData: Units }).unitData);
    if (id !== SetFormulaCalculationStartMutation.id || this.starting) return;
    this.wait(params as Changes);
    this.trigger._resetExecutingDirtyData();
    setTimeout(() => this.begin());
    throw new CanceledError();
  }

  /** Takes entries over at once; of other changes the grid waits for the last, 100 ms. */
  private take(): void {
    const { _waitingCommandQueue: queue, _setTimeoutKey: timer } = this.trigger;
    if (queue.length === 0 || queue.some(({ id }) => id !== SetRangeValuesMutation.id)) return;
    clearTimeout(timer);
    this.trigger._waitingCommandQueue = [];
    this.wait(this.trigger._generateDirty(queue));
    this.begin();
  }

  private wait(changes: Changes): void {
    this.waiting = this.waiting ? this.trigger._mergeDirty(this.waiting, changes) : changes;
    this.behind ??= performance.now();
    this.look();
  }

  private begin(): void {
    if (this.held || this.running || !this.waiting) return;
    const rest = this.restUntil - performance.now();
    if (rest > 0) return void setTimeout(() => this.begin(), rest);
    const changes = this.all ? { ...this.waiting, forceCalculation: true } : this.waiting;
    this.waiting = null;
    this.all = false;
    this.say("failure", "");
    this.running = true;
    this.stuck = 0;
    this.moved = false;
    this.entered = [];
    this.starting = true;
    void this.commands.executeCommand(SetFormulaCalculationStartMutation.id, changes, { onlyLocal: true });
    this.starting = false;
  }

  /** Takes out of the results what must not be put into the cells, since they changed meanwhile. */
  private spare(results: Units): void {
    if (this.moved) {
      for (const unit of Object.keys(results)) delete results[unit];
      void this.commands.executeCommand(SetTriggerFormulaCalculationStartMutation.id, { forceCalculation: true });
    }
    for (const [unit, sheet, cells] of this.entered) {
      for (const [row, line] of Object.entries(cells)) {
        for (const [column, cell] of Object.entries(line ?? {})) {
          if (isContent(cell)) delete results[unit]?.[sheet]?.[Number(row)]?.[Number(column)];
        }
      }
    }
  }

  private notified({ functionsExecutedState }: { functionsExecutedState?: number }): void {
    this.stuck = 0;
    if (functionsExecutedState === undefined) return;
    setTimeout(() => {
      this.running = false;
      this.begin();
      if (this.isRunning()) return;
      this.behind = null;
      this.tell();
    });
  }
}

/** Calculations follow one another. */
export const calculation: Fix = {
  name: "calculation",
  wrong:
    "The grid waits 100 ms before it calculates an entry, starts one calculation within another, loses changes that come meanwhile, and puts results over what was typed since.",
  seen: "0.25.1",
  members: ({ injector }) => triggerMembers(injector),
  mend(grid) {
    grid.calculation = new Calculation(grid.injector);
  },
};
