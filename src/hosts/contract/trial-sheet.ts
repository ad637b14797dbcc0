import type { Area } from "../../cells/area";
import type { Cell, Input } from "../../cells/cell";
import type { Host } from "../host";
import { pause } from "../pause";

const CALCULATION_LIMIT_MS = 20_000;
const PENDING = ["#BUSY!", "#GETTING_DATA"];

function comparable(_: string, value: unknown): unknown {
  if (typeof value === "number" && !Number.isFinite(value)) return String(value);
  if (typeof value !== "object" || value === null || Array.isArray(value)) return value;
  return Object.fromEntries(Object.entries(value).sort());
}

/** Throws unless both hold the same, numbers to the last bit. */
export function same(got: unknown, wanted: unknown): void {
  const [shownGot, shownWanted] = [JSON.stringify(got, comparable), JSON.stringify(wanted, comparable)];
  if (shownGot !== shownWanted) throw new Error(`expected ${shownWanted}, got ${shownGot}`);
}

/** A sheet that a check may fill. */
export interface TrialSheet {
  host: Host;
  sheet: string;
  at(address: string): Area;
  write(address: string, inputs: Input[][]): Promise<void>;
  /** Values once every formula has been calculated; Excel can say so while functions of add-ins still run. */
  read(address: string): Promise<Cell[][]>;
  /** The same of any sheet. */
  settledRead(area: Area): Promise<Cell[][]>;
}

const pending = (cell: Cell): boolean => typeof cell === "object" && cell !== null && PENDING.includes(cell.error);

function trial(host: Host, sheet: string): TrialSheet {
  const at = (address: string): Area => ({ sheet, address });
  const settledRead = async (area: Area): Promise<Cell[][]> => {
    const end = Date.now() + CALCULATION_LIMIT_MS;
    for (;;) {
      await host.settled();
      const cells = await host.read(area);
      if (!cells.flat().some(pending)) return cells;
      if (Date.now() > end) throw new Error(`no result after ${CALCULATION_LIMIT_MS / 1000} s in ${area.address}`);
      await pause(100);
    }
  };
  return {
    host,
    sheet,
    at,
    write: (address, inputs) => host.write(at(address), inputs),
    read: (address) => settledRead(at(address)),
    settledRead,
  };
}

/** Adds a sheet, lets `work` fill it, and removes it again whether or not that went well. */
export async function onTrialSheet(
  host: Host,
  sheet: string,
  work: (trial: TrialSheet) => Promise<void>,
): Promise<void> {
  if ((await host.sheets()).includes(sheet)) {
    throw new Error(`there is already a sheet "${sheet}": delete it and start again`);
  }
  const before = await host.selection().catch(() => null);
  await host.addSheet(sheet);
  try {
    await work(trial(host, sheet));
  } finally {
    await host.removeSheet(sheet);
    if (before) await host.select(before);
  }
}
