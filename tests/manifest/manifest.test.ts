// @vitest-environment jsdom
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { OfficeAddinManifest } from "office-addin-manifest";
import { describe, expect, test } from "vitest";

const FILE = resolve(import.meta.dirname, "../../manifest.xml");
const ASSETS = resolve(import.meta.dirname, "../../src/taskpane");
const BASE = "https://localhost:3000/";
const text = readFileSync(FILE, "utf8");
const xml = new DOMParser().parseFromString(text, "text/xml");

const all = (selector: string): Element[] => [...xml.querySelectorAll(selector)];
const values = (selector: string, name: string): string[] => all(selector).map((one) => one.getAttribute(name)!);
const resource = (id: string): string => xml.querySelector(`Resources [id="${id}"]`)!.getAttribute("DefaultValue")!;

/** Width and height from the header of a PNG file. */
function size(path: string): [number, number] {
  const bytes = readFileSync(path);
  expect(bytes.subarray(1, 4).toString()).toBe("PNG");
  return [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
}

describe("manifest.xml", () => {
  test("is read by Microsoft's own tool", async () => {
    expect(await OfficeAddinManifest.readManifestFile(FILE)).toMatchObject({
      displayName: "Canfall",
      hosts: ["Workbook"],
      iconUrl: `${BASE}assets/icon-32.png`,
      highResolutionIconUrl: `${BASE}assets/icon-64.png`,
      officeAppType: "TaskPaneApp",
      permissions: "ReadWriteDocument",
      defaultSettings: { sourceLocation: `${BASE}taskpane.html` },
    });
  });

  test("asks for a shared runtime and the functions of Excel that we use", () => {
    const sets = all("Set").map((set) => [set.getAttribute("Name"), set.getAttribute("MinVersion")]);
    expect(sets).toEqual([
      ["SharedRuntime", "1.1"],
      ["CustomFunctionsRuntime", "1.3"],
      ["ExcelApi", "1.13"],
    ]);
  });

  test("puts a long-lived runtime first in the host", () => {
    const first = xml.querySelector("VersionOverrides > Hosts > Host")!.firstElementChild!;
    expect(first.tagName).toBe("Runtimes");
    expect(values("Runtime", "lifetime")).toEqual(["long"]);
  });

  test("uses one page for the runtime, the functions, the commands and the pane", () => {
    const [page] = values("Runtime", "resid");
    expect(values("Page > SourceLocation", "resid")).toEqual([page]);
    expect(values("FunctionFile", "resid")).toEqual([page]);
    expect(values("Action > SourceLocation", "resid")).toEqual([page]);
    expect(resource(page!)).toBe(`${BASE}taskpane.html`);
  });

  test("defines every resource that it names once, and names every one that it defines", () => {
    const defined = values("Resources [id]", "id");
    expect(new Set(values("[resid]", "resid"))).toEqual(new Set(defined));
    expect(new Set(defined).size).toBe(defined.length);
  });

  // Microsoft, "How to find the proper order of manifest elements" (office/dev/add-ins/develop/manifest-element-ordering),
  // which prints the order of the published schemas: out of it, the add-in does not load
  const ORDER: Record<string, string[]> = {
    OfficeApp:
      "Id AlternateId Version ProviderName DefaultLocale DisplayName Description IconUrl HighResolutionIconUrl SupportUrl AppDomains Hosts Requirements DefaultSettings Permissions Dictionary VersionOverrides".split(
        " ",
      ),
    VersionOverrides: ["Description", "Requirements", "Hosts", "Resources", "WebApplicationInfo"],
    "VersionOverrides > Hosts > Host": ["Runtimes", "AllFormFactors", "DesktopFormFactor", "MobileFormFactor"],
    DesktopFormFactor: ["GetStarted", "FunctionFile", "ExtensionPoint"],
    GetStarted: ["Title", "Description", "LearnMoreUrl"],
    Control: ["Label", "ToolTip", "Supertip", "Icon", "Action"],
    Supertip: ["Title", "Description"],
    Resources: ["bt:Images", "bt:Urls", "bt:ShortStrings", "bt:LongStrings"],
  };
  test.each(Object.entries(ORDER))("keeps the order of the published schema in %s", (selector, order) => {
    const places = [...xml.querySelector(selector)!.children].map(({ tagName }) => order.indexOf(tagName));
    expect(places).not.toContain(-1);
    expect(places).toEqual([...places].sort((one, other) => one - other));
  });

  test("has an Id, a version and texts of the forms that the schema allows", () => {
    const text = (selector: string) => xml.querySelector(`OfficeApp > ${selector}`)!.textContent!;
    expect(text("Id")).toMatch(/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/);
    expect(text("Version")).toMatch(/^\d{1,5}(\.\d{1,5}){3}$/);
    // from memory: at most 125 characters in names, 250 in descriptions
    expect(text("ProviderName").length).toBeLessThanOrEqual(125);
    expect(values("OfficeApp > Description", "DefaultValue")[0]!.length).toBeLessThanOrEqual(250);
  });

  test("keeps resource names within 32 characters and short texts within 125", () => {
    expect(values("Resources [id]", "id").filter((id) => id.length > 32)).toEqual([]);
    expect(values("ShortStrings > *", "DefaultValue").filter((short) => short.length > 125)).toEqual([]);
    expect(values("LongStrings > *", "DefaultValue").filter((long) => long.length > 250)).toEqual([]);
  });

  test("offers the functions as CANFALL from functions.js and functions.json", () => {
    const [namespace] = values("Namespace", "resid");
    const [script] = values("Script > SourceLocation", "resid");
    const [metadata] = values("Metadata > SourceLocation", "resid");
    expect([namespace, script, metadata].map((id) => resource(id!))).toEqual([
      "CANFALL",
      `${BASE}functions.js`,
      `${BASE}functions.json`,
    ]);
  });

  test("opens the pane from a button on its own tab", () => {
    const tab = xml.querySelector("CustomTab")!;
    expect(resource(tab.querySelector(":scope > Label")!.getAttribute("resid")!)).toBe("Canfall");
    expect(tab.querySelector("Action")!.getAttribute("xsi:type")).toBe("ShowTaskpane");
  });

  test("leads nowhere but to the development address", () => {
    const links = values("[DefaultValue]", "DefaultValue").filter((value) => /:\/\//.test(value));
    expect(links.filter((link) => !link.startsWith(BASE))).toEqual([]);
    expect(all("AppDomain").map((domain) => `${domain.textContent}/`)).toEqual([BASE]);
  });

  test.each([16, 32, 80])("shows an icon of %i pixels that has that size", (pixels) => {
    const ids = values(`Icon > [size="${pixels}"]`, "resid");
    expect(new Set(ids).size).toBe(1);
    const path = resource(ids[0]!).slice(BASE.length);
    expect(size(resolve(ASSETS, path))).toEqual([pixels, pixels]);
  });

  test("shows icons of 32 and 64 pixels in the list of add-ins", () => {
    const icons = [...values("IconUrl", "DefaultValue"), ...values("HighResolutionIconUrl", "DefaultValue")];
    expect(icons.map((url) => size(resolve(ASSETS, url.slice(BASE.length))))).toEqual([
      [32, 32],
      [64, 64],
    ]);
  });
});
