import { createReadStream, existsSync, statSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize } from "node:path";

const TYPES: Record<string, string> = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".json": "application/json",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".woff2": "font/woff2",
  ".xml": "text/xml",
};

interface Serving {
  /** Files are served once this is done; where it fails each answer is its reason. */
  built?: Promise<void>;
  /** The folder of the host that the files are in, such as `/tools/`. */
  under?: string;
  headers?: Record<string, string>;
}

/** A plain host of static files. */
export async function serve(folder: string, { built, under = "/", headers = {} }: Serving) {
  const server = createServer(async (request, response) => {
    try {
      await built;
    } catch (problem) {
      response.writeHead(500).end(String(problem));
      return;
    }
    const path = normalize(new URL(request.url ?? "/", "http://host").pathname);
    const asked = path.endsWith("/") ? `${path}index.html` : path;
    const file = join(folder, asked.slice(under.length));
    if (!asked.startsWith(under) || !existsSync(file) || !statSync(file).isFile()) {
      response.writeHead(404).end();
      return;
    }
    const type = TYPES[extname(file)] ?? "application/octet-stream";
    response.writeHead(200, { "Content-Type": type, "Cache-Control": "max-age=3600", ...headers });
    createReadStream(file).pipe(response);
  });
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}${under}`,
    close() {
      server.closeAllConnections();
      server.close();
    },
  };
}
