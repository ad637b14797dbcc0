import type { IResources } from "@univerjs/core";

/** Both workbooks' parts, each part by sheet or name. */
export function joinedParts(some: IResources = [], more: IResources = []): IResources {
  const names = new Set([...some, ...more].map(({ name }) => name));
  const part = (all: IResources, name: string) => JSON.parse(all.find((one) => one.name === name)?.data || "{}");
  return [...names].map((name) => ({ name, data: JSON.stringify({ ...part(some, name), ...part(more, name) }) }));
}
