import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { pause } from "../../src/hosts/pause";
import { fileOf } from "./fake-excel-file";
import { Fault, type Matrix, PENDING, type Value } from "./fake-excel-formula";
import type { AddIn } from "./fake-excel-functions";
import { type Listener, root } from "./fake-excel-objects";
import { type Request, Server } from "./fake-excel-request";
import { Workbook } from "./fake-excel-workbook";
import { FakeOffice } from "./fake-office";

const OFFICE = resolve(import.meta.dirname, "../../node_modules/@microsoft/office-js/dist");
/** The loader first: it owns CustomFunctions.associate. */
const SCRIPTS = ["office.debug.js", "excel-win32-16.01.debug.js"];

const RESPONSE = 2;
const EVENT = 3;

const FUNCTION_CATEGORY = 1;
const INVOKE = 1000;
const WORKBOOK_CATEGORY = 65_536;
const EVENT_TYPES = { Selection: 2, DataChanged: 10, Calculated: 16 };

const ERRORS: Record<number, string> = { 1: "#N/A", 5: "#DIV/0!", 6: "#NUM!", 7: "#VALUE!", 8: "#NULL!" };

type Result = [id: number, ok: boolean, value: unknown, code?: number];

/** An error in a cell as Excel passes it where functions.json allows errors. */
const passed = (value: Value): unknown =>
  value instanceof Fault ? { type: "Error", basicType: "Error", basicValue: value.error } : value;

interface Message {
  id: number;
  /** What kind of request it is, as bits. */
  flags: number;
  message: { body: Request };
}

/** The bit of a request that may wait for the end of typing in a cell. */
const WAITS_FOR_CELL = 64;
/** Excel on the web takes and gives no more at once. */
const MOST_BYTES = 5_000_000;

const refused = (code: string, message: string) => ({
  Results: [],
  Error: { Code: code, Message: message, ActionIndex: 0, HttpStatusCode: 400, Location: "" },
});
const CELL_EDITED = refused("InvalidOperationInCellEditMode", "Excel is in cell-editing mode.");

function loadClient(): void {
  const tag = document.createElement("script");
  tag.setAttribute("src", "office.js");
  document.head.append(tag);
  for (const script of SCRIPTS) {
    // biome-ignore lint/security/noGlobalEval: a script of a page, which names its globals at the top level
    // biome-ignore lint/complexity/noCommaOperator: an indirect eval runs in the page, not in this function
    (0, eval)(readFileSync(resolve(OFFICE, script), "utf8"));
  }
}

/** Microsoft's client for Excel in this page, with a workbook behind it that lives in memory. */
export class FakeExcel {
  readonly workbook = new Workbook();
  /** Whether the add-in's functions are known, as they are not in a workbook opened without it. */
  registered = true;
  /** Events that the client asked for and has not given back. */
  readonly listening: string[] = [];
  /** The methods of every request, for tests of what is not asked. */
  readonly requests: Request[] = [];
  /** How long a request takes [ms]. */
  latency = 0;
  /** How many requests have no answer yet. */
  unanswered = 0;
  /** Files that were opened in windows of their own, as base64. */
  readonly windows: string[] = [];
  /** Whether somebody is typing in a cell: requests wait for the end of that where they ask for it, else are refused. */
  editing = false;
  /** What somebody else does before a request is answered; it is done once. */
  meanwhile: ((request: Request) => boolean) | null = null;
  /** The part of Office that is not Excel's. */
  readonly office: FakeOffice;
  readonly #results = new Map<string, Matrix | null>();
  readonly #running = new Map<number, string>();
  readonly #bridge = {
    sendMessageToHost: (text: string) => void this.#receive(text),
    onMessageFromHost: (_: string) => {},
  };
  readonly #server: Server;
  #untilDone = 0;

  constructor({ signatures, functions }: AddIn = { signatures: [], functions: new Map() }) {
    loadClient();
    this.office = new FakeOffice(() => fileOf(this.workbook));
    const { HostBridge } = OfficeExtension as unknown as { HostBridge: { init(bridge: object): void } };
    HostBridge.init(this.#bridge);
    for (const [id, work] of functions) CustomFunctions.associate(id, work as () => unknown);
    const known = new Map(signatures.map(({ id, ranges }) => [id, ranges]));
    this.workbook.call = (id, parameters) => this.#call(id, known.get(id), parameters);
    this.#server = new Server(root(this.workbook, this.#listener()), {
      setInvocationArrayResults: (results) => this.#accept(results as Result[]),
      notifyActionHandlerReady: () => undefined,
    });
  }

  #listener(): Listener {
    const excel = this;
    return {
      get registered() {
        return excel.registered;
      },
      changed: () => this.#calculate("DataChanged"),
      selected: () => this.tell("Selection"),
      listen: (event, on) => {
        if (on) this.listening.push(event);
        else this.listening.splice(this.listening.indexOf(event), 1);
      },
      opened: (base64) => void this.windows.push(base64),
      calculationState: () => (this.#untilDone-- > 0 ? "Calculating" : "Done"),
    };
  }

  #calculate(event: "DataChanged" | "Calculated"): void {
    this.#untilDone = 1;
    this.workbook.calculate();
    this.tell(event);
  }

  #call(id: string, ranges: boolean[] | undefined, parameters: Matrix[]): Matrix {
    if (!this.registered || !ranges) return [[new Fault("#NAME?")]];
    const pending = parameters.flat(2).find((value) => value instanceof Fault && value.error === "#BUSY!");
    if (pending) return [[pending]];
    const given = parameters.map((lines) => lines.map((line) => line.map(passed)));
    const values = ranges.map((isRange, i) => (isRange ? given[i] : given[i]?.[0]?.[0]) ?? null);
    const call = JSON.stringify([id, values]);
    const result = this.#results.get(call);
    if (result) return result;
    if (result === undefined) {
      this.#results.set(call, null);
      const number = this.#running.size + 1;
      this.#running.set(number, call);
      this.#send([{ messageCategory: FUNCTION_CATEGORY, messageType: INVOKE, message: [number, id, values, "", 0] }]);
    }
    throw PENDING;
  }

  #accept(results: Result[]): void {
    for (const [id, ok, value, code] of results) {
      const fault = () => new Fault(ERRORS[code!] ?? "#VALUE!", String(value));
      const values = Array.isArray(value) ? (value as Matrix) : [[value as number]];
      this.#results.set(this.#running.get(id)!, ok ? values : [[fault()]]);
    }
    this.#calculate("Calculated");
  }

  async #receive(text: string): Promise<void> {
    const { id, flags, message } = JSON.parse(text) as Message;
    this.requests.push(message.body);
    this.unanswered += 1;
    if (this.latency > 0) await pause(this.latency);
    while (this.editing && flags & WAITS_FOR_CELL) await pause(5);
    if (this.meanwhile?.(message.body)) this.meanwhile = null;
    const body = await this.#answer(message.body, text.length);
    this.unanswered -= 1;
    this.#post({ type: RESPONSE, id, message: { statusCode: 200, headers: {}, body } });
  }

  async #answer(request: Request, length: number): Promise<string> {
    if (this.editing) return JSON.stringify(CELL_EDITED);
    if (length > MOST_BYTES) {
      return JSON.stringify(
        refused("RequestPayloadSizeLimitExceeded", "The request payload size has exceeded the limit."),
      );
    }
    const answer = JSON.stringify(await this.#server.answer(request));
    if (answer.length <= MOST_BYTES) return answer;
    return JSON.stringify(
      refused("ResponsePayloadSizeLimitExceeded", "The response payload size has exceeded the limit."),
    );
  }

  /** Tells the client of an event, as after an act of a person. */
  tell(event: keyof typeof EVENT_TYPES): void {
    const targetId = event === "Selection" ? "" : "Workbook";
    const messageType = EVENT_TYPES[event];
    this.#send([{ messageCategory: WORKBOOK_CATEGORY, messageType, targetId, message: "{}" }]);
  }

  #send(entries: object[]): void {
    this.#post({ type: EVENT, message: { entries } });
  }

  #post(message: object): void {
    setTimeout(() => this.#bridge.onMessageFromHost(JSON.stringify(message)));
  }
}
