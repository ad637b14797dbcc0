import type { Ask } from "./night-messages";
import { nightWork } from "./night-work";

addEventListener("message", ({ data }: MessageEvent<Ask>) => {
  for (const said of nightWork(data)) postMessage(said);
});
