// @vitest-environment jsdom
import { beforeAll, describe, test } from "vitest";
import { contract } from "../../src/hosts/contract/contract";
import { excelHost } from "../../src/hosts/excel/excel";
import { FakeExcel } from "../support/fake-excel";
import { addIn } from "../support/fake-excel-functions";

beforeAll(async () => {
  new FakeExcel(await addIn());
});

describe("Excel, through Microsoft's client,", () => {
  test.each(contract)("keeps the contract: $name", ({ check }) => check(excelHost()));
});
