import { readFileSync } from "node:fs";
import { figureFindings } from "../share/check/figure-findings";
import { changed, type Finding, grouped } from "../share/finding";
import { checkedFile } from "../share/register-table";

/** What is printed of a file, one line of JSON each. */
interface Line {
  file: string;
  result: "agrees" | "findings" | "refused";
  sentence: string;
  code: string;
  findings: Omit<Finding, "group">[];
}

async function lineOf(file: string): Promise<Line> {
  const refused = (sentence: string): Line => ({ file, result: "refused", sentence, code: "", findings: [] });
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(readFileSync(file));
  } catch {
    return refused("the file cannot be read");
  }
  const { report, problem } = await checkedFile(file, bytes);
  if (!report) return refused(problem);
  // what was changed first, then what follows from it
  const findings = [...report.findings, ...grouped(figureFindings(report.figures)), ...report.follows.map(following)];
  return {
    file,
    result: report.agrees ? "agrees" : "findings",
    sentence: report.sentence,
    code: report.code,
    findings: findings.map(({ class: kind, where, was, is, text }) => ({ class: kind, where, was, is, text })),
  };
}

const following = (text: string): Finding => ({ ...changed(text.split(":")[0]!, ""), text });

async function main(files: readonly string[]): Promise<void> {
  const lines: Line[] = [];
  for (const file of files) {
    const line = await lineOf(file);
    lines.push(line);
    console.log(JSON.stringify(line));
  }
  process.exitCode = lines.length > 0 && lines.every(({ result }) => result === "agrees") ? 0 : 1;
}

main(process.argv.slice(2));
