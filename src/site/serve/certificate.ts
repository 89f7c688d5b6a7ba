import { createPrivateKey, X509Certificate } from "node:crypto";
import { chmodSync, existsSync, readFileSync, rmSync } from "node:fs";
import { homedir } from "node:os";
import { join } from "node:path";
import { generateCertificates } from "office-addin-dev-certs";

/** A certificate for https://localhost, and the authority that vouches for it. */
export interface Certificate {
  readonly cert: Buffer;
  readonly key: Buffer;
  /** To be trusted by the machine. */
  readonly authority: { readonly path: string; readonly text: string };
  /** Made just now, so that no machine trusts it yet. */
  readonly isNew: boolean;
}

/** Where office-addin-dev-certs keeps its certificates. */
export const certificateFolder = join(homedir(), ".office-addin-dev-certs");

const days = 365;

/**
 * The certificate in `folder`; a new one where there is none, or none that still serves. Trusting
 * it is left to the user: it changes what the whole machine believes.
 */
export async function ensureCertificate(
  folder: string = certificateFolder,
  now: Date = new Date(),
): Promise<Certificate> {
  const [authority, cert, key] = ["ca.crt", "localhost.crt", "localhost.key"].map((name) =>
    join(folder, name),
  ) as [string, string, string];
  const isNew = !serves(authority, cert, key, now);
  if (isNew) {
    // Where an authority is there already, the generator writes nothing and says nothing of it.
    for (const file of [authority, cert, key]) rmSync(file, { force: true });
    await forOwnerAlone(() => generateCertificates(authority, cert, key, days));
  }
  // A copy or an older version may have left it open to others.
  chmodSync(key, 0o600);
  return {
    cert: readFileSync(cert),
    key: readFileSync(key),
    authority: { path: authority, text: readFileSync(authority, "utf8") },
    isNew,
  };
}

/** Files made meanwhile are never readable by others, not even for a moment. */
async function forOwnerAlone(make: () => Promise<void>): Promise<void> {
  const before = process.umask(0o077);
  try {
    await make();
  } finally {
    process.umask(before);
  }
}

function serves(authority: string, cert: string, key: string, now: Date): boolean {
  if (![authority, cert, key].every((file) => existsSync(file))) return false;
  try {
    const vouching = new X509Certificate(readFileSync(authority));
    const own = new X509Certificate(readFileSync(cert));
    return (
      [vouching, own].every(
        ({ validFrom, validTo }) => new Date(validFrom) <= now && now < new Date(validTo),
      ) &&
      own.checkHost("localhost") !== undefined &&
      own.verify(vouching.publicKey) &&
      own.checkPrivateKey(createPrivateKey(readFileSync(key)))
    );
  } catch {
    // Not a certificate at all.
    return false;
  }
}
