import { spawn } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { connect, createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";

const RECALCULATE_ALWAYS = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>`;
const START_LIMIT_MS = 120_000;

/** Tells the processes of a run where its offices are kept. */
const FOLDER = "CANFALL_OFFICES";

/** A new profile of LibreOffice, by which every formula is calculated anew on loading. */
export function newProfile(folder: string): string {
  const profile = join(folder, "profile");
  mkdirSync(join(profile, "user"), { recursive: true });
  writeFileSync(join(profile, "user", "registrymodifications.xcu"), RECALCULATE_ALWAYS);
  return profile;
}

export const profileOption = (profile: string) => `-env:UserInstallation=file://${profile}`;

const freePort = () =>
  new Promise<number>((found) => {
    const trial = createServer().listen(0, "127.0.0.1", () => {
      const { port } = trial.address() as { port: number };
      trial.close(() => found(port));
    });
  });

const answers = (port: number) =>
  new Promise<boolean>((said) => {
    const call = connect(port, "127.0.0.1");
    call.once("connect", () => said(true)).once("error", () => said(false));
    call.once("connect", () => call.destroy());
  });

/** A LibreOffice that runs: its profile, and the port at which it takes orders. */
export interface Office {
  profile: string;
  port: number;
}

async function start(folder: string): Promise<Office> {
  const profile = newProfile(folder);
  const port = await freePort();
  const listen = `--accept=socket,host=127.0.0.1,port=${port},tcpNoDelay=1;urp;`;
  // an open sheet keeps it running from one order to the next
  const words = [profileOption(profile), "--headless", "--norestore", listen, "private:factory/scalc"];
  const office = spawn("soffice", words, { detached: true, stdio: "ignore" });
  office.unref();
  writeFileSync(join(folder, "process"), String(office.pid));
  writeFileSync(join(folder, "port"), String(port));
  const limit = Date.now() + START_LIMIT_MS;
  while (!(await answers(port))) {
    if (Date.now() > limit) throw new Error(`LibreOffice must start within ${START_LIMIT_MS / 1000} s`);
    await new Promise((later) => setTimeout(later, 100));
  }
  return { profile, port };
}

/** The office that this test process gives its orders to, once it runs; none outside a test run. */
export async function runningOffice(): Promise<Office | undefined> {
  const offices = process.env[FOLDER];
  if (!offices) return undefined;
  const own = join(offices, process.env.VITEST_POOL_ID ?? "1"); // one process at a time has this number
  if (existsSync(join(own, "process"))) {
    return { profile: join(own, "profile"), port: Number(readFileSync(join(own, "port"), "utf8")) };
  }
  return start(own);
}

/** Offices of a test run are started by the first test that needs one, used by those that follow, and ended here. */
export default function setUp(): () => void {
  const folder = mkdtempSync(join(tmpdir(), "canfall-offices-"));
  process.env[FOLDER] = folder;
  return () => {
    for (const own of readdirSync(folder)) {
      try {
        process.kill(-Number(readFileSync(join(folder, own, "process"), "utf8")));
      } catch (problem) {
        if ((problem as NodeJS.ErrnoException).code !== "ESRCH") throw problem; // ended by itself
      }
    }
    rmSync(folder, { recursive: true, force: true, maxRetries: 10, retryDelay: 200 });
  };
}
