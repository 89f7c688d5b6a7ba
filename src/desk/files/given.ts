import { InputError } from "../../cells";

export interface GivenFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

export const demoFile = "workbooks/alder-terrace.xlsx";

/** A file of the site, or one that the server was started with. */
export async function fetchFile(path: string, base: string): Promise<GivenFile> {
  const address = new URL(path, base);
  const answer = await fetch(address);
  const name = nameFrom(answer.headers) ?? address.pathname.split("/").at(-1) ?? "workbook.xlsx";
  if (!answer.ok) {
    const reason = (await answer.text()).trim().split("\n")[0] ?? "";
    throw new InputError(
      reason === "" ? `${name} could not be loaded (${answer.status}).` : reason,
    );
  }
  return { name, bytes: new Uint8Array(await answer.arrayBuffer()) };
}

/** The path of the file that the page's address asks for: "#given=…"; null for none. */
export function givenPath(hash: string): string | null {
  const token = /^#given=([\w-]+)$/.exec(hash)?.[1];
  return token === undefined ? null : `given/${token}`;
}

function nameFrom(headers: Headers): string | null {
  const coded = /filename\*=UTF-8''([^;]+)/.exec(headers.get("content-disposition") ?? "")?.[1];
  return coded === undefined ? null : decodeURIComponent(coded);
}
