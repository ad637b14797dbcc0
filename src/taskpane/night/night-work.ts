import { nightSteps } from "../../core/program/fit-night";
import { remedies } from "../../core/program/remedies";
import { twelveMonths } from "../../core/program/twelve-months";
import { words } from "../parts/task/words";
import type { Ask, Said } from "./night-messages";

/** Does what is asked, step by step; the last thing said is that it is done or that it failed. */
export function* nightWork(ask: Ask): Generator<Said, void> {
  try {
    if (ask.kind === "fit") yield* fitted(ask);
    else if (ask.kind === "months") {
      for (const month of twelveMonths(ask.programs)) yield { kind: "month", month };
    } else {
      for (const remedy of remedies(ask.program, ask.night)) yield { kind: "remedy", remedy };
    }
    yield { kind: "done" };
  } catch (error) {
    yield { kind: "failed", message: words(error) };
  }
}

function* fitted({ program }: Ask & { kind: "fit" }): Generator<Said, void> {
  const steps = nightSteps(program);
  for (;;) {
    const { done, value } = steps.next();
    yield { kind: "night", night: value };
    if (done) return;
  }
}
