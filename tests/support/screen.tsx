import { act, type ReactNode } from "react";
import { createRoot } from "react-dom/client";

(globalThis as { IS_REACT_ACT_ENVIRONMENT?: boolean }).IS_REACT_ACT_ENVIRONMENT = true;

/** jsdom has no layout to scroll. */
Element.prototype.scrollIntoView = () => {};

const later = () => act(async () => new Promise((resolve) => setTimeout(resolve, 5)));

/** Waits until `look` finds something true. */
export async function found<T>(look: () => T): Promise<NonNullable<T>> {
  for (let turn = 0; turn < 400; turn += 1) {
    const seen = look();
    if (seen) return seen;
    await later();
  }
  throw new Error(`not found in: ${document.body.textContent}`);
}

/** A page that shows one element, with what a person does on it. */
export async function screen(element: ReactNode) {
  const place = document.body.appendChild(document.createElement("div"));
  const root = createRoot(place);
  await act(async () => root.render(element));
  const inSight = (element: Element) => !element.closest('[style*="display: none"]');
  const all = (selector: string) => [...place.querySelectorAll<HTMLElement>(selector)].filter(inSight);

  const text = (selector: string) => all(selector).map((each) => each.textContent?.replace(/\s+/g, " ").trim() ?? "");

  function field(label: string): HTMLInputElement | HTMLSelectElement {
    const found = all("label").find((each) => each.textContent?.startsWith(label)) as HTMLLabelElement | undefined;
    if (!found) throw new Error(`no field ${label}`);
    return document.getElementById(found.htmlFor) as HTMLInputElement | HTMLSelectElement;
  }

  return {
    place,
    text,
    field,
    shows: (words: string) => found(() => place.textContent?.replace(/\s+/g, " ").includes(words)),
    /** The message or hint beside a field. */
    beside: (label: string) => {
      const ids = field(label).getAttribute("aria-describedby")?.split(" ") ?? [];
      return ids.map((id) => document.getElementById(id)?.textContent ?? "").join(" ");
    },
    async type(label: string, value: string) {
      const target = field(label);
      const set = Object.getOwnPropertyDescriptor(Object.getPrototypeOf(target), "value")!.set!;
      await act(async () => {
        set.call(target, value);
        target.dispatchEvent(new Event(target.tagName === "SELECT" ? "change" : "input", { bubbles: true }));
      });
      await later();
    },
    async press(name: string) {
      const button = await found(() => all("button").find((each) => each.textContent === name));
      await act(async () => button.click());
      await later();
    },
    /** Opens a step of the pane. */
    async step(title: string) {
      const tabOf = () => all("[role=tab]").find((each) => each.textContent?.startsWith(title));
      await found(() => all("[role=tab]").length);
      for (const group of all(".groups button")) {
        if (tabOf()) break;
        await act(async () => group.click());
        await later();
      }
      const tab = await found(tabOf);
      await act(async () => tab.click());
      await later();
    },
    async close() {
      await act(async () => root.unmount());
      place.remove();
    },
  };
}
