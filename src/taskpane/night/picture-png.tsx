import { flushSync } from "react-dom";
import { createRoot } from "react-dom/client";
import { type Png, pngOf } from "../map/picture/png";
import { NightChart } from "./night-chart";

/** The night's picture for paper, whatever the colours of the page. */
export async function picturePng(given: Omit<Parameters<typeof NightChart>[0], "dark">): Promise<Png> {
  const place = document.createElement("div");
  const root = createRoot(place);
  flushSync(() => root.render(<NightChart {...given} dark={false} />));
  try {
    return await pngOf(place.querySelector("svg")!);
  } finally {
    root.unmount();
  }
}
