/** What the steps speak of: files by their full path. */
export interface StepsOptions {
  /** "https://localhost:3443/" */
  readonly address: string;
  readonly manifest: string;
  readonly authority: string;
  /** Whether the certificate was made just now. */
  readonly isNew: boolean;
}

/** How to bring the served site into Excel, in plain steps. */
export function loadingSteps({ address, manifest, authority, isNew }: StepsOptions): string {
  return `Serving ${address} to this machine alone. Ctrl+C ends it.
${isNew ? "\nThe certificate is new: trust it before anything else.\n" : ""}
Not yet tried in Excel: these steps follow Microsoft's documentation. Its menus move from version
to version.

TRUST THE CERTIFICATE (once; it ends after a year at most)
  Windows and Mac:
    1. End this with Ctrl+C.
    2. npx office-addin-dev-certs install --days 365
    3. Say yes when the system asks, then start this again.
  Linux, for Excel on the web: in the browser's settings, under certificates, import
    ${authority}
    as an authority for websites.
  To see that it worked, open ${address}pane.html in a browser: no warning may come.
  To take the trust back: npx office-addin-dev-certs uninstall

GIVE THE MANIFEST TO EXCEL
  The manifest: ${manifest}
  Windows (shared folder catalogue):
    1. Make a folder, share it with yourself, and copy the manifest into it.
    2. In Excel: File, Options, Trust Center, Trust Center Settings, Trusted Add-in Catalogs.
       Enter the folder's network path (\\\\COMPUTER\\FOLDER), Add catalog, tick Show in Menu.
    3. Start Excel anew. Home, Add-ins, More Add-ins, Shared Folder: choose Fanrow, Add.
  Mac (wef folder):
    1. mkdir -p ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef
    2. Copy the manifest into that folder and start Excel anew.
    3. Home, Add-ins: choose Fanrow under Developer Add-ins.
  Web (upload), with a browser on this machine:
    1. Open a workbook. Home, Add-ins, More Add-ins, My Add-ins, Upload My Add-in.
    2. Choose the manifest, Upload.
    3. Should the browser ask whether the page may reach this machine, allow it.
  Then: Home shows the group Fanrow, and =FANROW.FLOW(24, 4) in a cell gives 51.36.

WHEN EXCEL SHOWS SOMETHING OLD (clear the cache; close Excel first)
  Windows: empty %LOCALAPPDATA%\\Microsoft\\Office\\16.0\\Wef
  Mac: empty ~/Library/Containers/com.microsoft.Excel/Data/Library/Application Support/Microsoft/Office/16.0/Wef
       and ~/Library/Containers/com.microsoft.Excel/Data/Library/Caches; remove the manifest from
       the wef folder and copy it there again.
  Web: clear the browser's site data, then upload the manifest again.`;
}
