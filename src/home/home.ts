import { ASKED, builtFor, hostFindings } from "./host-findings";
import "./home.css";

const PATIENCE_MS = 5000;

/** Reads functions.json as a page of another origin does; answers why it could not. */
function fromElsewhere(): Promise<string> {
  return new Promise((done) => {
    const frame = document.createElement("iframe");
    frame.setAttribute("sandbox", "allow-scripts");
    frame.hidden = true;
    frame.src = "probe.html";
    const finish = (why: string) => {
      frame.remove();
      clearTimeout(limit);
      removeEventListener("message", heard);
      done(why);
    };
    const heard = ({ source, data }: MessageEvent) => {
      if (source === frame.contentWindow) finish(String(data.fromElsewhere));
    };
    const limit = setTimeout(() => finish("no answer"), PATIENCE_MS);
    addEventListener("message", heard);
    document.body.append(frame);
  });
}

async function fetched(name: string): Promise<Response | null> {
  const answer = await fetch(name, { cache: "no-store" }).catch(() => null);
  return answer?.ok ? answer : null;
}

function element<T extends HTMLElement>(id: string): T {
  return document.getElementById(id) as T;
}

const address = new URL(".", location.href).href;

async function checkHost(): Promise<void> {
  const result = element("host-result");
  result.textContent = "Looking …";
  const [manifest, why, ...answers] = await Promise.all([
    fetched("manifest.xml"),
    fromElsewhere(),
    ...ASKED.map((name) => fetched(name)),
  ]);
  const headers = Object.fromEntries(ASKED.map((name, i) => [name, answers[i]?.headers ?? null]));
  const found = hostFindings({ address, manifest: (await manifest?.text()) ?? null, fromElsewhere: why, headers });
  if (found.length === 0) {
    result.textContent = "This host is ready for Excel.";
    return;
  }
  const list = document.createElement("ul");
  for (const one of found) list.append(Object.assign(document.createElement("li"), { textContent: one }));
  result.replaceChildren("This host is not ready for Excel:", list);
}

async function sayAddress(): Promise<void> {
  const meant = builtFor((await (await fetched("manifest.xml"))?.text()) ?? "");
  if (meant === address) return;
  element("other-address").hidden = false;
}

element("check-host").addEventListener("click", () => void checkHost());
void sayAddress();
