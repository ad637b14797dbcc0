import type { Ask } from "./plan-messages";
import { PlanService } from "./plan-service";

const service = new PlanService((said) => postMessage(said));

addEventListener("message", ({ data }: MessageEvent<Ask>) => void service.answer(data));
