/** What the page saw of the host that serves it. */
export interface HostSeen {
  /** The address of the folder, ending in a slash. */
  address: string;
  /** The text of manifest.xml; null where it is not there. */
  manifest: string | null;
  /** Why a page of another origin could not read functions.json; "" where it could. */
  fromElsewhere: string;
  /** The headers of each file, by its name; null where the file is not there. */
  headers: Readonly<Record<string, Headers | null>>;
}

const TYPES: Record<string, RegExp> = {
  "functions.js": /^(text|application)\/(x-)?(java|ecma)script\b/,
  "functions.json": /\bjson\b/,
  "taskpane.html": /^text\/html\b/,
};

/** The files that Excel asks the host for. */
export const ASKED = Object.keys(TYPES);

/** The address that a manifest was built for, ending in a slash; null where it names none. */
export const builtFor = (manifest: string): string | null =>
  /<SourceLocation DefaultValue="([^"]*\/)taskpane\.html"/.exec(manifest)?.[1] ?? null;

function addressFindings({ address, manifest }: HostSeen): string[] {
  const found: string[] = [];
  if (!address.startsWith("https://")) found.push(`Excel takes https addresses only, and this one is ${address}`);
  const meant = manifest === null ? null : builtFor(manifest);
  if (meant === null) found.push("manifest.xml is not there: put the whole folder on the host");
  else if (meant !== address)
    found.push(`the folder was built for ${meant}: build it again with CANFALL_URL=${address} npm run build`);
  return found;
}

/** A header that keeps Excel from showing the page in its pane. */
function frameFinding(name: string, headers: Headers): string | null {
  const option = headers.get("X-Frame-Options");
  if (option) return `${name} comes with X-Frame-Options: ${option}; take that header away`;
  const ancestors = /frame-ancestors([^;]*)/i.exec(headers.get("Content-Security-Policy") ?? "")?.[1]?.trim();
  if (ancestors === undefined || ancestors.split(/\s+/).some((one) => one === "*" || one === "https:")) return null;
  return `${name} comes with frame-ancestors ${ancestors}; take that part of Content-Security-Policy away`;
}

function fileFindings(name: string, headers: Headers | null): string[] {
  if (headers === null) return [`${name} is not there: put the whole folder on the host`];
  const type = headers.get("Content-Type") ?? "nothing";
  const wrongType = TYPES[name]!.test(type) ? [] : [`${name} must be served as its own type, got ${type}`];
  const frame = name === "taskpane.html" ? frameFinding(name, headers) : null;
  return frame === null ? wrongType : [...wrongType, frame];
}

/** What would keep this host from serving the add-in to Excel; none where it is ready. */
export function hostFindings(seen: HostSeen): string[] {
  const elsewhere = `functions.json cannot be read from Excel's own address (${seen.fromElsewhere}), so no function would be known: add the header Access-Control-Allow-Origin: *`;
  return [
    ...addressFindings(seen),
    ...ASKED.flatMap((name) => fileFindings(name, seen.headers[name] ?? null)),
    ...(seen.fromElsewhere === "" ? [] : [elsewhere]),
  ];
}
