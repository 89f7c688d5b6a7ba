import { randomBytes } from "node:crypto";
import { readFileSync, statSync } from "node:fs";
import type { ServerResponse } from "node:http";
import { basename, resolve } from "node:path";
import { answerPlain } from "../../serve";
import { UsageError } from "./options";

const workbookType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

export interface GivenWorkbook {
  readonly name: string;
  readonly path: string;
  /** Cannot be guessed; whoever knows it may read the file. */
  readonly token: string;
}

/** Workbooks named on the command line, each under a token of its own. Nothing is written to them. */
export function giveFiles(paths: readonly string[]): GivenWorkbook[] {
  return paths.map((given) => {
    const path = resolve(given);
    if (statSync(path, { throwIfNoEntry: false })?.isFile() !== true)
      throw new UsageError(`${given}: there is no such file`);
    return { name: basename(path), path, token: randomBytes(24).toString("base64url") };
  });
}

/** Answers "/given/<token>" with the file as it stands now; false for any other path. */
export function answerGiven(
  path: string,
  files: readonly GivenWorkbook[],
  response: ServerResponse,
): boolean {
  const token = /^\/given\/([\w-]+)$/.exec(path)?.[1];
  if (token === undefined) return false;
  const file = files.find((each) => each.token === token);
  response.setHeader("Cache-Control", "no-store");
  if (!file) {
    answerPlain(
      response,
      404,
      "There is no such file here. Take the address that the server printed last.",
    );
    return true;
  }
  try {
    if (!statSync(file.path).isFile()) throw new Error("no plain file");
    const bytes = readFileSync(file.path);
    response.writeHead(200, {
      "Content-Type": workbookType,
      "Content-Length": bytes.length,
      "Content-Disposition": `attachment; filename*=UTF-8''${encodeURIComponent(file.name)}`,
    });
    response.end(response.req.method === "HEAD" ? undefined : bytes);
  } catch {
    answerPlain(response, 404, `${file.name} can no longer be read where it was.`);
  }
  return true;
}
