import { randomBytes } from "node:crypto";
import { type FileHandle, link, open, readdir, rename, stat, unlink } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { findPlace, type Guard, type Place } from "./target";
import { WriteError, writeErrorOf } from "./write-error";

/**
 * A file that comes into its place whole or not at all. It is written under another name beside
 * its place and renamed when all of it is on the disk: whatever happens before, what stood there
 * stands there still.
 */
export class SafeFile {
  private constructor(
    private readonly target: string,
    private readonly guard: Guard,
    private readonly place: Place,
    private readonly beside: string,
    private readonly file: FileHandle,
  ) {}

  /** Opens a file beside the target. Throws a WriteError where the target may not be written. */
  static async begin(target: string, guard: Guard): Promise<SafeFile> {
    const place = await findPlace(target, guard);
    const folder = dirname(place.path);
    const prefix = `.${basename(place.path).slice(0, 60)}.`;
    await sweep(folder, prefix);
    const beside = join(folder, `${prefix}${randomBytes(8).toString("hex")}${suffix}`);
    try {
      const file = await open(beside, "wx", place.mode ?? 0o666);
      return new SafeFile(target, guard, place, beside, file);
    } catch (error) {
      throw writeErrorOf(target, error);
    }
  }

  async write(content: string | Uint8Array): Promise<void> {
    await this.attempt(() => this.file.appendFile(content));
  }

  /** Puts the file into its place. Throws a WriteError, and leaves the place as it was, where it cannot. */
  async commit(): Promise<void> {
    await this.attempt(async () => {
      if (this.place.mode !== undefined) await this.file.chmod(this.place.mode);
      await this.file.sync();
      await this.file.close();
      await (this.guard.replace ? this.replace() : this.add());
    });
    await syncFolder(dirname(this.place.path));
  }

  /** Gives up: nothing of it stays. */
  async abandon(): Promise<void> {
    await this.file.close().catch(() => {});
    await unlink(this.beside).catch(() => {});
  }

  /** Another may have put a source here, or a link to one, since the file was begun. */
  private async replace(): Promise<void> {
    const { path } = await findPlace(this.target, this.guard);
    await rename(this.beside, path);
  }

  /** A link is refused where a name is taken, even by one who came a moment ago. */
  private async add(): Promise<void> {
    try {
      await link(this.beside, this.place.path);
    } catch (error) {
      if (!linkless.has((error as NodeJS.ErrnoException).code ?? "")) throw error;
      await findPlace(this.target, this.guard);
      return rename(this.beside, this.place.path);
    }
    await unlink(this.beside);
  }

  private async attempt(action: () => Promise<void>): Promise<void> {
    try {
      await action();
    } catch (error) {
      await this.abandon();
      if ((error as NodeJS.ErrnoException).code === "EEXIST")
        throw new WriteError(`${this.target}: was written by another just now: give another name`);
      throw error instanceof WriteError ? error : writeErrorOf(this.target, error);
    }
  }
}

/** Writes a file whole or not at all; throws a WriteError where it may not or cannot be written. */
export async function writeFileSafely(
  target: string,
  content: string | Uint8Array,
  guard: Guard,
): Promise<void> {
  const file = await SafeFile.begin(target, guard);
  await file.write(content);
  await file.commit();
}

const suffix = ".part";

/** What a disk without links to files answers. */
const linkless = new Set(["EPERM", "ENOTSUP", "EOPNOTSUPP", "ENOSYS", "EMLINK"]);

/** No write takes an hour: what is older was left by one that was ended. */
const abandonedAfter = 3_600_000;

async function sweep(folder: string, prefix: string): Promise<void> {
  const names = await readdir(folder).catch(() => []);
  for (const name of names) {
    if (!name.startsWith(prefix) || !/^[0-9a-f]{16}\.part$/.test(name.slice(prefix.length)))
      continue;
    const path = join(folder, name);
    const about = await stat(path).catch(() => undefined);
    if (about && Date.now() - about.mtimeMs > abandonedAfter) await unlink(path).catch(() => {});
  }
}

/** A name is on the disk once its folder is; some systems do not open folders. */
async function syncFolder(folder: string): Promise<void> {
  const handle = await open(folder, "r").catch(() => undefined);
  await handle?.sync().catch(() => {});
  await handle?.close();
}
