import { Generator } from "../../uniformity/generator";
import { normalQuantile } from "../../uniformity/normal";

const WORDS = 2 ** 32;

/**
 * Standard normal deviates that are the same in every run.
 *
 *     z = normalQuantile((w + 1/2) / 2^32)        w: the generator's next word
 *
 * @source inversion of the distribution function, from memory
 */
export class Normals {
  readonly #generator: Generator;

  constructor(seed: number) {
    this.#generator = Generator.seeded(seed);
  }

  next(): number {
    return normalQuantile((this.#generator.word() + 0.5) / WORDS);
  }

  fill(list: Float64Array): Float64Array {
    for (let i = 0; i < list.length; i += 1) list[i] = this.next();
    return list;
  }
}
