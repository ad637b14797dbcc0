import { clock } from "../clock";
import { ask } from "../question";
import type { Store, Work } from "./store";

interface Parts {
  box: HTMLElement;
  /** Whether what is open may be replaced. */
  mayGo(): boolean;
  restore(work: Work): Promise<string>;
  /** Says what was restored. */
  say(sentence: string): void;
}

const time = (at: number) => {
  const then = new Date(at);
  const today = then.toDateString() === new Date().toDateString();
  return today ? clock(then) : `${then.toLocaleDateString()}, ${clock(then)}`;
};

/** Offers the newest work that was left behind, in the bar of the page, then the one before it. */
export async function offerLeftWork(store: Store, parts: Parts): Promise<void> {
  const { box, mayGo, restore, say } = parts;
  const [work] = await store.left();
  box.hidden = !work;
  if (!work) return;
  const [yes, no] = box.querySelectorAll("button");
  yes!.textContent = `Restore the work of ${time(work.at)} on ${work.name}`;
  const act = (button: HTMLButtonElement, what: () => Promise<void>) => {
    button.onclick = () => {
      box.hidden = true;
      void what().finally(() => offerLeftWork(store, parts));
    };
  };
  act(yes!, async () => {
    if (mayGo()) say(await restore(work));
  });
  act(no!, async () => {
    const answer = await ask(`Discard the work of ${time(work.at)} on ${work.name}? It can't be brought back.`, [
      ["discard", "Discard it"],
      ["not", "Keep it"],
    ]);
    if (answer === "discard") await store.drop(work.id);
  });
}
