import { execFile } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, rmdirSync, statSync, utimesSync } from "node:fs";
import { join, resolve } from "node:path";
import { promisify } from "node:util";

const ROOT = resolve(import.meta.dirname, "../..");
const DIST = join(ROOT, "dist");
const LAST = join(DIST, "desk/index.html");
const LOCK = join(ROOT, ".cache/building");
const LOCK_LIMIT_MS = 240_000;
const SOURCES = ["src", "webpack.config.js", "manifest.xml", "package-lock.json"];

function newest(path: string): number {
  const entry = statSync(path);
  if (!entry.isDirectory()) return entry.mtimeMs;
  return Math.max(0, ...readdirSync(path).map((name) => newest(join(path, name))));
}

function fresh(): boolean {
  if (!existsSync(LAST) || !existsSync(join(DIST, "manifest.xml"))) return false;
  return statSync(LAST).mtimeMs > Math.max(...SOURCES.map((name) => newest(join(ROOT, name))));
}

/** Takes the lock, or answers false while another test file builds; a lock left by a killed run is taken over. */
function locked(): boolean {
  mkdirSync(join(ROOT, ".cache"), { recursive: true });
  if (existsSync(LOCK) && Date.now() - statSync(LOCK).mtimeMs > LOCK_LIMIT_MS) rmdirSync(LOCK);
  try {
    mkdirSync(LOCK);
    return true;
  } catch {
    return false;
  }
}

async function build(): Promise<void> {
  try {
    await promisify(execFile)("node", [join(ROOT, "node_modules/webpack/bin/webpack.js"), "--env", "production"], {
      cwd: ROOT,
      env: { ...process.env, CANFALL_URL: process.env.CANFALL_URL ?? "https://canfall.example/" },
    });
  } catch (problem) {
    const { stdout = "", stderr = "" } = problem as { stdout?: string; stderr?: string };
    throw new Error(`the production build must succeed:\n${stdout}${stderr}`);
  }
}

/** The folder of the production build; builds it where a source is newer. */
export async function productionBuild(): Promise<string> {
  while (!locked()) await new Promise((done) => setTimeout(done, 500));
  try {
    if (!fresh()) {
      await build();
      // webpack leaves files as they are that came out the same
      utimesSync(LAST, new Date(), new Date());
    }
  } finally {
    rmdirSync(LOCK);
  }
  return DIST;
}
