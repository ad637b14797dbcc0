// Sees to it that the programs the tests drive are on this machine: installs them on Debian as root, or names them.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";

const PROGRAMS = [
  { command: "chromium", debian: "chromium", usedFor: "the browser tests" },
  { command: "soffice", debian: "libreoffice-calc", usedFor: "recalculating workbook files" },
  { command: "uno", module: true, debian: "python3-uno", usedFor: "giving LibreOffice orders" },
  { command: "openpyxl", module: true, debian: "python3-openpyxl", usedFor: "reading saved files with another reader" },
];

const onPath = (command) => process.env.PATH.split(delimiter).some((folder) => existsSync(join(folder, command)));
const hasModule = (name) => spawnSync("/usr/bin/python3", ["-c", `import ${name}`], { stdio: "ignore" }).status === 0;
const present = ({ command, module }) => (module ? hasModule(command) : onPath(command));
const missing = PROGRAMS.filter((program) => !present(program));

if (missing.length > 0) {
  const packages = missing.map(({ debian }) => debian);
  const canInstall = process.getuid?.() === 0 && onPath("apt-get");
  if (canInstall) {
    console.log(`Installing ${packages.join(" and ")} for the tests`);
    const apt = (...words) =>
      spawnSync("apt-get", words, {
        stdio: ["ignore", "ignore", "inherit"],
        env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
      });
    apt("update", "-q");
    apt("install", "-y", "-q", "--no-install-recommends", ...packages);
  }
  const still = missing.filter((program) => !present(program));
  for (const { command, debian, usedFor } of still) {
    console.error(`The tests need ${command} for ${usedFor}: install it (on Debian: apt-get install ${debian}).`);
  }
  if (still.length > 0) process.exit(1);
}
