import { useState } from "react";
import type { Area, Host } from "../hosts/host";
import { reference } from "./address";
import { type Done, insertAt, siteOf, takeBack, untouched } from "./insert";

/** A plain question before something is overwritten. */
export interface Question {
  text: string;
  yes: string;
  no: string;
  act: () => Promise<void>;
}

const words = (reason: unknown) => (reason instanceof Error ? reason.message : String(reason));
const ofCells = (count: number) => (count > 1 ? ` (${count} cells are filled)` : "");

/** Inserts with a question where something stands, and takes the last insert back. */
export function useInsert(host: Host) {
  const [done, setDone] = useState<Done[]>([]);
  const [message, setMessage] = useState("");
  const [problem, setProblem] = useState("");
  const [question, setQuestion] = useState<Question | null>(null);

  function clear(): void {
    setQuestion(null);
    setMessage("");
    setProblem("");
  }

  async function attempt(work: () => Promise<string>): Promise<void> {
    clear();
    try {
      setMessage(await work());
    } catch (reason) {
      setProblem(words(reason));
    }
  }

  const insert = (formula: string, target: Area, rows: number, columns: number) =>
    attempt(async () => {
      const site = await siteOf(host, target, rows, columns);
      const write = async () => {
        const written = await insertAt(host, site, formula);
        setDone((before) => [...before, written]);
        return `Inserted in ${reference(target)}. Undo takes it back`;
      };
      const { taken } = site;
      if (!taken) return write();
      if (site.fixed) {
        throw new Error(`${taken.address} shows part of another formula's answer. Choose another cell`);
      }
      setQuestion({
        text: `${taken.address} holds ${taken.holds}${ofCells(taken.count)}. Replace what is there?`,
        yes: "Replace",
        no: "Keep",
        act: () => attempt(write),
      });
      return "";
    });

  const undo = () =>
    attempt(async () => {
      const last = done.at(-1)!;
      const back = async () => {
        await takeBack(host, last);
        setDone((all) => all.filter((each) => each !== last));
        return `${reference(last.area)} is as it was before the insert`;
      };
      if (await untouched(host, last)) return back();
      setQuestion({
        text: `${reference(last.area)} was changed after the insert. Put back what stood there before it?`,
        yes: "Put back",
        no: "Leave it",
        act: () => attempt(back),
      });
      return "";
    });

  return { insert, undo, clear, question, message, problem, canUndo: done.length > 0 };
}
