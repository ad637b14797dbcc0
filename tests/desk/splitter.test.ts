// @vitest-environment jsdom
import { beforeEach, expect, it } from "vitest";
import { splitter } from "../../src/desk/splitter";

/** The handle of a page that was just loaded; jsdom knows no pointer capture. */
function loaded(): HTMLElement {
  const handle = document.createElement("div");
  let held = false;
  Object.assign(handle, {
    setPointerCapture: () => {
      held = true;
    },
    hasPointerCapture: () => held,
  });
  document.body.style.removeProperty("--pane-width");
  document.body.append(handle);
  splitter(handle);
  return handle;
}
const width = () => document.body.style.getPropertyValue("--pane-width");
const pointer = (handle: HTMLElement, kind: string, clientX: number) =>
  handle.dispatchEvent(Object.assign(new MouseEvent(kind, { clientX, bubbles: true }), { pointerId: 1 }));
const press = (handle: HTMLElement, key: string) => handle.dispatchEvent(new KeyboardEvent("keydown", { key }));

beforeEach(() => {
  localStorage.clear();
  window.innerWidth = 1366;
});

it("a drag makes the pane wider, and the next start remembers it", () => {
  const handle = loaded();
  expect(width()).toBe("400px");
  pointer(handle, "pointermove", 500);
  expect(width(), "moved without a press").toBe("400px");
  pointer(handle, "pointerdown", 960);
  pointer(handle, "pointermove", 666);
  expect(width()).toBe("700px"); // 1366 - 666
  loaded();
  expect(width()).toBe("700px");
});

it("the pane takes at most 70 % of the window and at least 320 px, also once the window is smaller", () => {
  const handle = loaded();
  pointer(handle, "pointerdown", 960);
  pointer(handle, "pointermove", 0);
  expect(width()).toBe("956px"); // 0.7 · 1366 = 956.2
  expect(handle.getAttribute("aria-valuenow")).toBe("956");
  window.innerWidth = 1000;
  window.dispatchEvent(new Event("resize"));
  expect(width()).toBe("700px");
  pointer(handle, "pointermove", 990);
  expect(width()).toBe("320px");
});

it("keys move it by 20 px, to both ends and back to the usual width", () => {
  const handle = loaded();
  for (const [key, expected] of [
    ["ArrowLeft", "420px"],
    ["Home", "956px"],
    ["End", "320px"],
    ["ArrowRight", "320px"],
    ["Enter", "400px"],
  ] as const) {
    press(handle, key);
    expect(width(), key).toBe(expected);
  }
});
