import { keepChoice, keptChoice } from "./kept-choice";

const KEPT_AS = "canfall-pane-width";
const LEAST_PX = 320;
const USUAL_PX = 400;
const MOST_SHARE = 0.7;
const STEP_PX = 20;

/** Lets mouse and keys share the page between grid and pane; the width is remembered. */
export function splitter(handle: HTMLElement): void {
  const most = () => Math.max(LEAST_PX, Math.floor(MOST_SHARE * window.innerWidth));
  let wanted = Number(keptChoice(KEPT_AS)) || USUAL_PX;

  function show(): void {
    const width = Math.min(most(), Math.max(LEAST_PX, Math.round(wanted)));
    document.body.style.setProperty("--pane-width", `${width}px`);
    for (const [name, value] of [
      ["now", width],
      ["min", LEAST_PX],
      ["max", most()],
    ] as const)
      handle.setAttribute(`aria-value${name}`, String(value));
  }
  function move(width: number): void {
    wanted = Math.min(most(), Math.max(LEAST_PX, width));
    keepChoice(KEPT_AS, String(wanted));
    show();
  }

  const widths = new Map<string, () => number>([
    ["ArrowLeft", () => wanted + STEP_PX],
    ["ArrowRight", () => wanted - STEP_PX],
    ["Home", most],
    ["End", () => LEAST_PX],
    ["Enter", () => USUAL_PX],
  ]);
  handle.addEventListener("keydown", (event) => {
    const width = widths.get(event.key);
    if (!width) return;
    event.preventDefault();
    move(width());
  });
  handle.addEventListener("pointerdown", (event) => {
    event.preventDefault();
    handle.focus();
    handle.setPointerCapture(event.pointerId);
  });
  handle.addEventListener("pointermove", (event) => {
    if (handle.hasPointerCapture(event.pointerId)) move(window.innerWidth - event.clientX);
  });
  handle.addEventListener("dblclick", () => move(USUAL_PX));
  window.addEventListener("resize", show);
  show();
}
