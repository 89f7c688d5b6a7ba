import { startDesk } from "../../desk";

const root = document.getElementById("desk-root") as HTMLElement;
const base = new URL(".", location.href).href;

try {
  await startDesk(root, base);
} catch (error) {
  root.textContent = `The desk cannot start: ${error instanceof Error ? error.message : error}`;
}
