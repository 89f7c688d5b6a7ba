/** Functions by id, with the file of each, in the order in which they were released. */
export function released(): Map<string, string>;

/** functions.json from the comments of these files. Throws on any complaint of the generator. */
export function generateMetadata(files?: string[]): Promise<string>;

/** What the comments say, by id: first of the function, then of each parameter. */
export function descriptions(): Promise<Record<string, readonly string[]>>;

/** What a bundler defines, for `functions/index.ts` to tell what the comments say. */
export function defined(): Promise<Record<string, string>>;
