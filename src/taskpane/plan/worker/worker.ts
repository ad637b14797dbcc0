import type { Ask } from "./messages";
import { PlanService } from "./service";

const service = new PlanService((said) => postMessage(said));

addEventListener("message", ({ data }: MessageEvent<Ask>) => void service.answer(data));
