import { readFileSync, statSync } from "node:fs";
import type { IncomingMessage, ServerResponse } from "node:http";
import { join } from "node:path";
import { lookup } from "mrmime";

/**
 * Answers with a file of a folder as it stands now, whole; false where there is none. Whatever
 * becomes of the file meanwhile, the answer is a file or none: a stream that broke off would end
 * the server.
 */
export function answerFile(
  folder: string,
  path: string,
  request: IncomingMessage,
  response: ServerResponse,
): boolean {
  const file = placeIn(folder, path);
  if (file === null) return false;
  try {
    const about = statSync(file);
    if (!about.isFile()) return false;
    const tag = `W/"${about.size}-${Math.round(about.mtimeMs)}"`;
    response.setHeader("ETag", tag);
    if (request.headers["if-none-match"] === tag) {
      response.writeHead(304).end();
      return true;
    }
    const bytes = readFileSync(file);
    response.writeHead(200, { "Content-Type": typeOf(file), "Content-Length": bytes.length });
    response.end(request.method === "HEAD" ? undefined : bytes);
    return true;
  } catch {
    response.removeHeader("ETag");
    return false;
  }
}

/** The file that a path names; null for names that begin with a dot, and whatever leads elsewhere. */
function placeIn(folder: string, path: string): string | null {
  let plain: string;
  try {
    plain = decodeURIComponent(path);
  } catch {
    return null;
  }
  const names = plain.split("/").slice(1);
  if (!plain.startsWith("/") || names.some((name) => /^\.|[\\\0:]/.test(name))) return null;
  if (names.slice(0, -1).includes("")) return null;
  return join(folder, ...names.slice(0, -1), names.at(-1) || "index.html");
}

function typeOf(file: string): string {
  const type = lookup(file) ?? "application/octet-stream";
  return type.startsWith("text/") ? `${type};charset=utf-8` : type;
}
