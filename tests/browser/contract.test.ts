import { afterAll, beforeAll, describe, test } from "vitest";
import { contract } from "../../src/hosts/contract";
import type { Host } from "../../src/hosts/host";
import { type Desks, desks } from "./desk-page";
import { pageHost } from "./page-host";

let all: Desks;
let host: Host;
beforeAll(async () => {
  all = await desks();
  host = await pageHost((await all.open()).page);
});
afterAll(() => all?.close());

/** Checks that wait for the desk to insert files. */
const AWAITED =
  /^(sheets of a file|names come in|formulas that came in|a defined name that is taken|a protected sheet)/;

describe("the desk as a host", () => {
  for (const { name, check } of contract) test.skipIf(AWAITED.test(name))(name, () => check(host));
});
