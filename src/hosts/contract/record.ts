import type { Host } from "../host";
import { runContract } from "./contract";

interface Asked {
  what: string;
  ms: number;
  /** What the spreadsheet refused with; null where it answered. */
  refused: string | null;
}

/** What a self-test found. */
export interface SelfTestRecord {
  results: readonly { name: string; error?: string }[];
  /** Everything as text to send on: no cell of the workbook is in it. */
  text: string;
}

/** The same host, which writes down what it is asked, how long that took and whether it was refused. */
function recorded(host: Host, asked: Asked[]): Host {
  return new Proxy(host, {
    get(target, key) {
      const member = Reflect.get(target, key);
      if (typeof member !== "function") return member;
      return async (...given: unknown[]) => {
        const start = performance.now();
        const note = (refused: string | null) =>
          void asked.push({ what: String(key), ms: Math.round(performance.now() - start), refused });
        try {
          const answer = await member.apply(target, given);
          note(null);
          return answer;
        } catch (reason) {
          note(reason instanceof Error ? reason.message : String(reason));
          throw reason;
        }
      };
    },
  });
}

/** Runs every check, and keeps a record for whoever looks into a failure. */
export async function recordSelfTest(
  host: Host,
  progress: (done: number, of: number) => void,
): Promise<SelfTestRecord> {
  const asked: Asked[] = [];
  const results = await runContract(recorded(host, asked), progress);
  const failed = results.filter(({ error }) => error !== undefined);
  const lines = [
    `Canfall self-test: ${results.length - failed.length} of ${results.length} checks passed in ${host.label}`,
    host.platform,
    ...results.map(({ name, error }) => (error === undefined ? `passed: ${name}` : `FAILED: ${name}: ${error}`)),
    "requests in their order:",
    ...asked.map(({ what, ms, refused }) => `${what} ${ms} ms${refused === null ? "" : ` refused: ${refused}`}`),
  ];
  return { results, text: lines.join("\n") };
}
