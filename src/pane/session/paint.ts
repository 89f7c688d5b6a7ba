/** Lets the browser draw before a long piece of work. */
export function paint(): Promise<void> {
  return new Promise((done) => setTimeout(done));
}
