/** What a finding is about: something changed, something shown as other than it is, or something put beside. */
export type FindingClass = "changed" | "hides or misleads" | "added";

/** One thing that a check found, in an officer's words. */
export interface Finding {
  class: FindingClass;
  /** `Report!B7`, a sheet, or the part of the file. */
  where: string;
  /** As it should be, in the format shown; "" where there is nothing to compare. */
  was: string;
  is: string;
  /** The whole sentence. */
  text: string;
  /** Findings of one group are alike. */
  group?: string;
}

const MOST_ALIKE = 8;

const sentence = (where: string, said: string) => `${where}: ${said}.`;

const finding =
  (kind: FindingClass) =>
  (where: string, said: string, was = "", is = "", group = ""): Finding => ({
    class: kind,
    where,
    was,
    is,
    text: sentence(where, said),
    ...(group && { group }),
  });

export const changed = finding("changed");
export const misleading = finding("hides or misleads");
export const added = finding("added");

/** A finding whose sentence does not begin with its place. */
export const saying = (kind: FindingClass, where: string, text: string, was = "", is = ""): Finding => ({
  class: kind,
  where,
  was,
  is,
  text,
});

const alike = ({ class: kind, group, where }: Finding) => `${kind}\n${group ?? ""}\n${where.split("!")[0]}`;

/** Of many findings alike the first few, and how many more there are. */
export function grouped(findings: readonly Finding[]): Finding[] {
  const groups = new Map<string, Finding[]>();
  for (const one of findings) groups.set(alike(one), [...(groups.get(alike(one)) ?? []), one]);
  return [...groups.values()].flatMap((all) => {
    const more = all.length - MOST_ALIKE;
    if (more <= 1) return all;
    const [{ class: kind, where }] = all as [Finding, ...Finding[]];
    const sheet = where.split("!")[0]!;
    return [...all.slice(0, MOST_ALIKE), saying(kind, sheet, `${sheet}: ${more} more like these.`)];
  });
}

/** Whether none of the findings speaks against a copy. */
export const harmlessOnly = (findings: readonly Finding[]): boolean => findings.every((one) => one.class === "added");
