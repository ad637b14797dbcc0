type Act = (result: object) => void;

const succeeded = (value?: unknown): object => ({ status: "succeeded", value });
const failed = (message: string): object => ({ status: "failed", error: { message } });

/** Office's own part of Office.js: the document as a file, in slices, and what this Office can do. */
export class FakeOffice {
  /** Files handed out and not closed. */
  open = 0;
  /** Requirement sets that this Office lacks. */
  readonly lacks = new Set<string>();
  /** The slice that cannot be handed out. */
  damagedSlice: number | null = null;
  /** Lets a test make the slices smaller than asked for. */
  largestSlice = Infinity;
  readonly context = {
    platform: "PC",
    diagnostics: { host: "Excel", platform: "PC", version: "16.0.14326.20454" },
    requirements: { isSetSupported: (set: string) => !this.lacks.has(set) },
    document: {
      getFileAsync: async (_: string, { sliceSize }: { sliceSize: number }, done: Act) =>
        done(this.#handOut(await this.file(), Math.min(sliceSize, this.largestSlice))),
    },
  };

  constructor(private readonly file: () => Promise<Uint8Array>) {
    window.Office = Object.create(Office, { context: { value: this.context } });
  }

  #handOut(bytes: Uint8Array, sliceSize: number): object {
    if (this.open === 2) return failed("Two files are open already.");
    this.open += 1;
    return succeeded({
      size: bytes.length,
      sliceCount: Math.ceil(bytes.length / sliceSize),
      getSliceAsync: (index: number, done: Act) => {
        const data = [...bytes.subarray(index * sliceSize, (index + 1) * sliceSize)];
        done(
          index === this.damagedSlice ? failed("The slice is damaged.") : succeeded({ index, data, size: data.length }),
        );
      },
      closeAsync: (done: Act) => {
        this.open -= 1;
        done(succeeded());
      },
    });
  }
}
