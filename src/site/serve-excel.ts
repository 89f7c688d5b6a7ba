import { join } from "node:path";
import { ensureCertificate } from "./serve/certificate";
import { isFresh } from "./serve/fresh";
import { serveForExcel } from "./serve/server";
import { loadingSteps } from "./serve/steps";

const project = join(import.meta.dirname, "../..");
const built = join(project, "dist");

try {
  if (!isFresh(project, built)) {
    console.log("Building the site; this takes some seconds …");
    const { buildSite } = await import("./build/build");
    await buildSite(built);
  }
  const certificate = await ensureCertificate();
  const server = await serveForExcel({ folder: built, certificate });
  console.log(
    loadingSteps({
      address: server.address,
      manifest: join(built, "manifest.xml"),
      authority: certificate.authority.path,
      isNew: certificate.isNew,
    }),
  );
  for (const signal of ["SIGINT", "SIGTERM"] as const)
    process.once(signal, () => void server.close());
} catch (error) {
  console.error(error instanceof Error ? error.message : String(error));
  process.exitCode = 1;
}
