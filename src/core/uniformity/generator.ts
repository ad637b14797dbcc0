/** Up to this size each half of a word gives a place; the chance of each is then off by its 256th part at most. */
const HALVED = 256;
const WORDS = 2 ** 32;

/** The random generator xoshiro128** 1.1 (Blackman and Vigna, public domain). */
export class Generator {
  readonly #state: Int32Array;

  /** @param state Four whole numbers from 0 to 2^32 - 1, not all 0 */
  constructor(state: ArrayLike<number>) {
    this.#state = Int32Array.from(state);
  }

  /** A generator whose state is the first four numbers of splitmix32. */
  static seeded(seed: number): Generator {
    let sum = seed;
    const state = Array.from({ length: 4 }, () => {
      sum = (sum + 0x9e3779b9) | 0;
      let mixed = Math.imul(sum ^ (sum >>> 16), 0x85ebca6b);
      mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
      return mixed ^ (mixed >>> 16);
    });
    return new Generator(state);
  }

  /** The next word, a whole number from 0 to 2^32 - 1. */
  word(): number {
    const state = this.#state;
    const a = state[0] as number;
    const b = state[1] as number;
    const c = state[2] as number;
    const d = state[3] as number;
    const five = Math.imul(b, 5);
    const shifted = b << 9;
    const third = c ^ a;
    const fourth = d ^ b;
    state[1] = b ^ third;
    state[0] = a ^ fourth;
    state[2] = third ^ shifted;
    state[3] = (fourth << 11) | (fourth >>> 21);
    return Math.imul((five << 7) | (five >>> 25), 9) >>> 0;
  }

  /** Draws as many places as `counts` has, each equally likely, and counts how often each came. */
  draw(counts: Float64Array): void {
    const size = counts.length;
    const halved = size <= HALVED;
    const state = this.#state;
    let a = state[0] as number;
    let b = state[1] as number;
    let c = state[2] as number;
    let d = state[3] as number;
    counts.fill(0);
    for (let i = 0; i < size; i += halved ? 2 : 1) {
      const five = Math.imul(b, 5);
      const word = Math.imul((five << 7) | (five >>> 25), 9);
      const shifted = b << 9;
      c ^= a;
      d ^= b;
      b ^= c;
      a ^= d;
      c ^= shifted;
      d = (d << 11) | (d >>> 21);
      const place = halved ? Math.imul(word >>> 16, size) >>> 16 : Math.floor((word >>> 0) * (size / WORDS));
      counts[place] = (counts[place] as number) + 1;
      if (halved && i + 1 < size) {
        const second = Math.imul(word & 0xffff, size) >>> 16;
        counts[second] = (counts[second] as number) + 1;
      }
    }
    state[0] = a;
    state[1] = b;
    state[2] = c;
    state[3] = d;
  }
}
