import { CAUSES } from "../../src/core/bed/causes/cause-names";
import { randomNumbers } from "../support/random";
import { bedOfDrops } from "./causes/drops";
import { measuredAt } from "./causes/gauge";
import { OUTSIDE, type Wish } from "./causes/made-bed";
import { bedOfPowers } from "./causes/powers";
import { calibration, confusion, figures, type Said, say, share, wronglyNamed } from "./causes/tally";

// npm run bench:causes -- SEED BEDS_A_CAUSE BEDS_A_CAUSE_ASIDE; left out: 1, 100 and 10

const [seed, each, aside] = [1, 100, 10].map((otherwise, i) => Number(process.argv[2 + i] ?? otherwise)) as [
  number,
  number,
  number,
];
const GENERATORS = { powers: bedOfPowers, drops: bedOfDrops };
const CANS: [number, number] = [24, 60];
const HEADER =
  "| beds | leading cause right % | of the six % | named % | right where named % | right head where weak head named % | right head named, of all weak heads % |\n|" +
  " --- |".repeat(7);
const ASIDE: [string, Omit<Wish, "fault">][] = [
  ["24 to 30 cans", { cans: [24, 30] }],
  ["part circles, same nozzle", { cans: CANS, arcs: "unmatched" }],
  ["one can in ten not read", { cans: CANS, missing: 0.1 }],
  ["can places off by 10 cm", { cans: CANS, cansOff: 0.1 }],
  ["head places off by 20 cm", { cans: CANS, headsOff: 0.2 }],
  ["half as much scatter again", { cans: CANS, harder: 1.5 }],
];

for (const [at, [name, make]] of Object.entries(GENERATORS).entries()) {
  const random = randomNumbers(1000 * seed + 7 * at + 1);
  random();
  const beds = (faults: readonly Wish["fault"][], count: number, wish: Omit<Wish, "fault">): Said[] =>
    Array.from({ length: count }, () => faults.map((fault) => say(make(random, { ...wish, fault })))).flat();

  console.log(`\n## ${name}, seed ${seed}\n`);
  const main = beds(CAUSES, each, { cans: CANS });
  console.log(`${HEADER}\n| ${figures(main)} |\n\n${confusion(main)}\n`);
  console.log(`| weight of the leading cause | beds | right % |\n| --- | --- | --- |\n${calibration(main)}\n`);
  const outputs = [
    [0, 0.01],
    [0.01, 0.5],
    [0.5, 0.6],
    [0.6, 0.7],
  ] as const;
  const weak = main.filter(({ made }) => made.fault === "one weak head");
  for (const [low, high] of outputs) {
    const some = weak.filter(({ made }) => made.output >= low && made.output < high);
    const led = share(some, ({ right, rightHead }) => right && rightHead);
    console.log(`weak head with ${low} to ${high} of its flow: ${some.length} beds, its head leads ${led} %`);
  }
  const atHeads = randomNumbers(seed + 17);
  const helped = main.map(({ made }) => say(made, measuredAt(made, atHeads)));
  const rightBefore = main.filter(({ right }) => right);
  const spoilt = main.filter(({ right }, i) => right && !helped[i]!.right).length;
  console.log(
    `\nwith bucket at six heads, gauge at four, wind log and supply side:\n${HEADER}\n| ${figures(helped)} |`,
  );
  console.log(`of ${rightBefore.length} leading causes that were right without, ${spoilt} are wrong with them`);
  if (aside === 0) continue;
  const sound = beds(["nothing wrong found"], 3 * each, { cans: CANS });
  const accused = share(sound, ({ named, right }) => named && !right);
  console.log(`\nsound beds: ${sound.length}, accused by name ${accused} %`);
  const soundHelped = sound.map(({ made }) => say(made, measuredAt(made, atHeads)));
  console.log(`with what was measured at the heads: ${share(soundHelped, ({ named, right }) => named && !right)} %`);
  const outside = beds(OUTSIDE, Math.ceil(each / 3), { cans: CANS });
  console.log(
    `outside the vocabulary: ${outside.length} beds, a wrong cause named on ${share(outside, wronglyNamed)} %`,
  );
  const two = beds(["one weak head"], 3 * aside, { cans: CANS, also: "pressure falls along the line" });
  const either = ({ lead, right }: Said) => right || lead === "pressure falls along the line";
  const named = share(two, (one) => one.named && !either(one));
  console.log(`two causes at once (weak head, falling pressure): ${two.length} beds, neither named on ${named} %\n`);
  console.log(HEADER.replace("| beds", "| | beds").replace("\n|", "\n| --- |"));
  for (const [what, wish] of ASIDE) console.log(`| ${what} | ${figures(beds(CAUSES, aside, wish))} |`);
}
