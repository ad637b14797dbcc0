import type { Store, Work } from "./store";

interface Parts {
  box: HTMLElement;
  restore(work: Work): Promise<void>;
}

const time = (at: number) => {
  const then = new Date(at);
  const today = then.toDateString() === new Date().toDateString();
  const clock = then.toLocaleTimeString([], { hour: "2-digit", minute: "2-digit", hour12: false });
  return today ? clock : `${then.toLocaleDateString()}, ${clock}`;
};

/** Offers the newest work that was left behind, in the bar of the page, then the one before it. */
export async function offerLeftWork(store: Store, { box, restore }: Parts): Promise<void> {
  const [work] = await store.left();
  box.hidden = !work;
  if (!work) return;
  const [yes, no] = box.querySelectorAll("button");
  yes!.textContent = `Restore the work of ${time(work.at)} on ${work.name}`;
  const act = (button: HTMLButtonElement, what: () => Promise<void>) => {
    button.onclick = () => {
      box.hidden = true;
      void what().then(() => offerLeftWork(store, { box, restore }));
    };
  };
  act(yes!, () => restore(work));
  act(no!, () => store.drop(work.id));
}
