import { realpath, stat } from "node:fs/promises";
import { basename, dirname, join, resolve } from "node:path";
import { WriteError, writeErrorOf } from "./write-error";

/** What must hold before a file may be written. */
export interface Guard {
  /** Files that are read, or were just written: never written over, by whatever name. */
  readonly sources: readonly string[];
  /** A file that is there already may be replaced. */
  readonly replace: boolean;
}

/** Where a target really lies, and what stands there now. */
export interface Place {
  /** The path with every link followed. */
  readonly path: string;
  /** Permissions of the file that stands there; undefined where there is none. */
  readonly mode: number | undefined;
}

/** Finds the place of a target. Throws a WriteError where it may not be written. */
export async function findPlace(target: string, { sources, replace }: Guard): Promise<Place> {
  try {
    const there = await identityOf(target);
    if (there === undefined) return { path: await newPath(target), mode: undefined };
    for (const source of sources)
      if ((await identityOf(source).catch(() => undefined))?.id === there.id)
        throw new WriteError(`${target}: is the same file as ${source}: give another name`);
    if (!there.isFile)
      throw new WriteError(`${target}: is no plain file, so nothing is written to it`);
    if (!replace)
      throw new WriteError(`${target}: is there already: give another name, or add --replace`);
    return { path: await realpath(target), mode: there.mode };
  } catch (error) {
    throw error instanceof WriteError ? error : writeErrorOf(target, error);
  }
}

/** Whether two targets, there or not yet, are one file. */
export async function isSameTarget(one: string, other: string): Promise<boolean> {
  const [a, b] = await Promise.all([identityOf(one), identityOf(other)]);
  if (a !== undefined || b !== undefined) return a?.id === b?.id;
  const [here, there] = await Promise.all([newPath(one), newPath(other)]);
  return here === there;
}

/** A file by device and number, which all its names and links share; undefined where there is none. */
async function identityOf(path: string) {
  try {
    const about = await stat(path, { bigint: true });
    return {
      id: `${about.dev}:${about.ino}`,
      isFile: about.isFile(),
      mode: Number(about.mode) & 0o777,
    };
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return undefined;
    throw error;
  }
}

async function newPath(target: string): Promise<string> {
  const path = resolve(target);
  return join(await realpath(dirname(path)), basename(path));
}
