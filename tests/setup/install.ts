import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";

/** Programs that the tests hold the project against, and the Debian packages that bring them. */
const needed = [
  { program: "soffice", brings: "libreoffice-calc-nogui", for: "independent recalculation" },
  { program: "chromium", brings: "chromium", for: "the pages in a real browser" },
  { program: "xmllint", brings: "libxml2-utils", for: "the manifest against its schema" },
] as const;

const isThere = (program: string) =>
  (process.env.PATH ?? "").split(delimiter).some((folder) => existsSync(join(folder, program)));

const absent = needed.filter(({ program }) => !isThere(program));
if (absent.length > 0) {
  const packages = absent.map((entry) => entry.brings);
  console.log(`Installing ${packages.join(", ")} …`);
  const asRoot = process.getuid?.() === 0 ? [] : ["sudo", "-n"];
  const apt = (...args: string[]) => {
    const [command, ...rest] = [...asRoot, "apt-get", "-qq", "-y", ...args] as [
      string,
      ...string[],
    ];
    spawnSync(command, rest, {
      stdio: ["ignore", "ignore", "inherit"],
      env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
    });
  };
  apt("update");
  apt("install", "--no-install-recommends", ...packages);
}

for (const { program, brings, for: purpose } of needed)
  if (!isThere(program))
    console.log(
      `Could not install ${program} (${purpose}): install it by hand, on Debian with "apt-get install ${brings}". ` +
        "The tests that need it will fail.",
    );
