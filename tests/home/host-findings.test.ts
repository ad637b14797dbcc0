import { describe, expect, test } from "vitest";
import { type HostSeen, hostFindings } from "../../src/home/host-findings";

const ADDRESS = "https://host.example/tools/canfall/";
const manifestFor = (address: string) => `<SourceLocation DefaultValue="${address}taskpane.html"/>`;
const served = (type: string, more: Record<string, string> = {}) => new Headers({ "Content-Type": type, ...more });
const seen = (changes: Partial<HostSeen> = {}, headers: HostSeen["headers"] = {}): HostSeen => ({
  address: ADDRESS,
  manifest: manifestFor(ADDRESS),
  fromElsewhere: "",
  headers: {
    "functions.js": served("text/javascript; charset=utf-8"),
    "functions.json": served("application/json"),
    "taskpane.html": served("text/html"),
    ...headers,
  },
  ...changes,
});
const page = (headers: Record<string, string>) => seen({}, { "taskpane.html": served("text/html", headers) });

describe("the check of a host", () => {
  test("finds nothing where all is as Excel needs it", () => {
    expect(hostFindings(seen())).toEqual([]);
  });

  test.each<[string, HostSeen, string]>([
    [
      "no header for other origins",
      seen({ fromElsewhere: "TypeError" }),
      "add the header Access-Control-Allow-Origin: *",
    ],
    ["an address without encryption", seen({ address: "http://host.example/" }), "https addresses only"],
    [
      "a folder built for another address",
      seen({ manifest: manifestFor("https://other.example/") }),
      `CANFALL_URL=${ADDRESS} npm run build`,
    ],
    ["no manifest", seen({ manifest: null }), "manifest.xml is not there"],
    ["a missing file", seen({}, { "functions.js": null }), "functions.js is not there"],
    [
      "a script served as text",
      seen({}, { "functions.js": served("text/plain") }),
      "functions.js must be served as its own type, got text/plain",
    ],
    [
      "X-Frame-Options",
      page({ "X-Frame-Options": "SAMEORIGIN" }),
      "X-Frame-Options: SAMEORIGIN; take that header away",
    ],
    [
      "narrow frame-ancestors",
      page({ "Content-Security-Policy": "frame-ancestors 'self'; default-src 'self'" }),
      "frame-ancestors 'self'",
    ],
  ])("names %s", (_, host, words) => {
    expect(hostFindings(host).join("\n")).toContain(words);
  });

  test.each(["frame-ancestors https:", "frame-ancestors 'self' *", "default-src 'self'"])("lets pass %s", (policy) => {
    expect(hostFindings(page({ "Content-Security-Policy": policy }))).toEqual([]);
  });
});
