import type { Ask } from "./bed-messages";
import { bedWork } from "./bed-work";

addEventListener("message", ({ data }: MessageEvent<Ask>) => {
  for (const said of bedWork(data)) postMessage(said);
});
