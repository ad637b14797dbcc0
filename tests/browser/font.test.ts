import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Desk, type Desks, desks } from "./desk-page";

interface Drawn {
  font: string;
  width: number;
}

let all: Desks;
let desk: Desk;
beforeAll(async () => {
  all = await desks();
  desk = await all.anew("?example=audit", recordDrawing);
});
afterAll(() => all?.close());

/** Notes for each text that is drawn on a canvas the fonts and widths it was drawn with. */
function recordDrawing(): void {
  const drawn: Record<string, Drawn[]> = {};
  const { fillText } = CanvasRenderingContext2D.prototype;
  CanvasRenderingContext2D.prototype.fillText = function (text, ...place) {
    drawn[text] ??= [];
    drawn[text].push({ font: this.font, width: this.measureText(text).width });
    return fillText.call(this, text, ...place);
  };
  Object.assign(window, { drawn });
}

/** Widths of Calibri's letters [1/1000 of its size], as files of the PDF format list them for it: from memory. */
const WIDTHS: Record<string, number> = {
  ...{ " ": 226, a: 479, b: 525, c: 423, d: 525, e: 498, f: 305, g: 471, h: 525, i: 229, j: 239, k: 455, l: 229 },
  ...{ m: 799, n: 525, o: 527, p: 525, q: 525, r: 349, s: 391, t: 335, u: 525, v: 452, w: 715, x: 433, y: 453, z: 395 },
};
const DIGIT = 507;

const measured = (style: string, text: string): Promise<number> =>
  desk.page.evaluate(
    ([font, words]) => {
      const pen = document.createElement("canvas").getContext("2d")!;
      pen.font = font;
      return pen.measureText(words).width;
    },
    [`${style} 1000px Calibri`, text] as const,
  );

describe("the font of the desk", () => {
  test("has the widths of Calibri, whatever fonts the machine has", async () => {
    for (const [letter, width] of Object.entries(WIDTHS)) {
      expect(Math.round(await measured("", letter)), `width of "${letter}"`).toBe(width);
    }
    for (const digit of "0123456789") {
      for (const style of ["", "bold", "italic", "italic bold"]) {
        expect(Math.round(await measured(style, digit)), `${style} ${digit}`).toBe(DIGIT);
      }
    }
  });

  test("is there before the grid draws its first cell", async () => {
    const label = await desk.page.evaluate(async () => {
      const { host } = window.desk;
      const { drawn } = window as unknown as { drawn: Record<string, Drawn[]> };
      const cells = (await host.read((await host.used("Results"))!)).flat();
      const labels = cells.filter((cell) => typeof cell === "string" && /^[a-z ]{4,}$/.test(cell)) as string[];
      return Object.entries(drawn).filter(([text]) => labels.includes(text));
    });
    expect(label.length).toBeGreaterThan(0);
    for (const [text, draws] of label) {
      const width = [...text].reduce((sum, letter) => sum + WIDTHS[letter]!, 0) / 1000;
      for (const { font, width: shown } of draws) {
        if (/bold|[6-9]00/.test(font)) continue;
        expect(font).toContain("Calibri");
        const size = Number(/([\d.]+)px/.exec(font)![1]);
        expect(shown / size / width, `${text} in ${font}`).toBeCloseTo(1, 1.5);
      }
    }
  });
});
