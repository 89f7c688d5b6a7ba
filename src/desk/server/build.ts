import { spawn } from "node:child_process";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";

/** Builds the site into a folder. Rejects with what the build said where it failed. */
export async function buildSite(project: string, folder: string): Promise<void> {
  const vite = dirname(createRequire(import.meta.url).resolve("vite/package.json"));
  const args = [
    join(vite, "bin/vite.js"),
    "build",
    ...["--config", "src/site/vite.config.ts"],
    ...["--outDir", folder, "--emptyOutDir"],
    ...["--logLevel", "warn"],
  ];
  const child = spawn(process.execPath, args, { cwd: project, stdio: ["ignore", "pipe", "pipe"] });
  let said = "";
  for (const stream of [child.stdout, child.stderr])
    stream.setEncoding("utf8").on("data", (text: string) => {
      said += text;
    });
  const status = await new Promise<number | null>((resolve, reject) => {
    child.once("error", reject);
    child.once("close", resolve);
  });
  if (status !== 0) throw new Error(`the site could not be built:\n${said.trim()}`);
}
