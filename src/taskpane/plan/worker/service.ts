import { InputError } from "../../../core/errors";
import { caution, coverage, type Plan } from "../../../core/layout/coverage";
import { driestPatchCoefficient } from "../../../core/layout/driest-patch";
import { judgement } from "../../../core/layout/judgement";
import type { SearchInput } from "../../../core/layout/search/input";
import { finalistPatches, ranking } from "../../../core/layout/search/ranking";
import { type Candidate, search } from "../../../core/layout/search/search";
import { words } from "../../parts/task/words";
import type { Ask, Planned, Said } from "./messages";

/** Share of the bed that the driest patch covers at least. */
export const PATCH_SHARE = 0.05;
/** With more cells the patch would hold up what is dragged. */
const MOST_PATCH_CELLS = 10_000;
const SLICE_MS = 60;

/** Works out one layout. */
export function planned(plan: Plan): Planned {
  const covered = coverage(plan);
  const small = covered.rates.values.length <= MOST_PATCH_CELLS;
  return {
    plan,
    coverage: covered,
    judgement: judgement(covered),
    patch: small ? driestPatchCoefficient(covered, PATCH_SHARE) : null,
    caution: caution(plan),
  };
}

const pause = () => new Promise<void>((go) => setTimeout(go, 0));

/** Answers what the pane asks; a search lets other askings in between, so that it can be stopped. */
export class PlanService {
  private readonly stopped = new Set<number>();

  constructor(private readonly say: (said: Said) => void) {}

  async answer(ask: Ask): Promise<void> {
    const { id } = ask;
    if (ask.kind === "stop") {
      this.stopped.add(id);
      return;
    }
    try {
      if (ask.kind === "plan") this.say({ id, kind: "planned", planned: planned(ask.plan) });
      else await this.search(id, ask.input);
    } catch (error) {
      const parameter = error instanceof InputError ? error.parameter : "";
      this.say({ id, kind: "failed", message: words(error), parameter });
    }
  }

  private async search(id: number, input: SearchInput): Promise<void> {
    const { total, candidates } = search(input);
    const tried: Candidate[] = [];
    let slice = performance.now();
    for (const candidate of candidates) {
      tried.push(candidate);
      if (performance.now() - slice < SLICE_MS) continue;
      this.say({ id, kind: "progress", tried: tried.length, total });
      await pause();
      if (this.stopped.delete(id)) break;
      slice = performance.now();
    }
    const ranked = ranking(tried);
    const patches = finalistPatches(ranked, PATCH_SHARE);
    this.say({ id, kind: "found", found: { ranking: ranked, patches, tried: tried.length, total } });
  }
}
