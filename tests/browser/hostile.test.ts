import { afterAll, beforeAll, expect, test } from "vitest";
import { HOSTILE_COUNT, hostileFile } from "../foreign/hostile/generator";
import { chooseFile, type Desk, type Desks, desks, savedFile } from "./desk-page";

/** Which of them: `npm run hostile` opens all, `HOSTILE=200-300` a range; tests/foreign/hostile reads those that are not drawn. */
const [FROM, TO] = range(process.env.HOSTILE ?? "3");
const COUNT = TO - FROM;

function range(asked: string): [from: number, to: number] {
  if (asked === "all") return [0, HOSTILE_COUNT];
  const [from, to] = asked.split("-").map(Number);
  return to === undefined ? [0, from!] : [from!, to];
}

let all: Desks;
let desk: Desk;
beforeAll(async () => {
  all = await desks();
  desk = await all.open();
  desk.page.on("dialog", (dialog) => dialog.accept());
});
afterAll(() => all?.close());

/** What the line above the grid says once a file was opened or refused. */
async function outcome(file: Uint8Array, name: string): Promise<string> {
  const line = desk.page.locator("#file");
  await chooseFile(desk, file, name);
  await expect
    .poll(() => line.textContent(), { timeout: 30_000 })
    .toMatch(new RegExp(`^(Opening )?${name}( failed|$)`));
  return (await line.textContent()) ?? "";
}

/** Types a formula into a free cell of the first sheet and reads what it gives. */
const calculated = (number: number) =>
  desk.page.evaluate(async (one) => {
    const [sheet] = await window.desk.host.sheets();
    const at = { sheet: sheet!, address: "J30" };
    await window.desk.host.write(at, [[`=${one}+1`]]);
    await window.desk.settled();
    return (await window.desk.host.read(at))[0]![0];
  }, number);

test(
  `${COUNT} files that are wrong leave page, calculation and Save alive, and are refused in one sentence`,
  async () => {
    const dead: string[] = [];
    let refused = 0;
    for (let i = FROM; i < TO; i += 1) {
      const { wrong, file } = hostileFile(i);
      const said = await outcome(file, `wrong ${i}.xlsx`).catch((problem) => `no answer: ${problem}`);
      if (said.includes("failed: ")) refused += 1;
      const plain = said === `wrong ${i}.xlsx` || /failed: the file must [^\n]+, got [^\n]*$/.test(said);
      const two = await calculated(i).catch(String);
      const saved = await savedFile(desk, "Save under another name").then(
        ({ length }) => length > 500,
        () => false,
      );
      if (!plain || two !== i + 1 || !saved) dead.push(JSON.stringify({ wrong, said, two, saved }));
      if (dead.length > 20) break;
    }
    console.log(`${COUNT} files: ${refused} refused, the others opened; not as they should be: ${dead.length}`);
    expect(dead.join("\n")).toBe("");
  },
  COUNT * 60_000 + 60_000,
);
