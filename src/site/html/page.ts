import { type Html, html } from "./escape";

export interface Page {
  /** Path of the file in the site: `help/flow.html`. */
  readonly file: string;
  readonly title: string;
  readonly body: Html;
}

/** Nothing but our own style sheet and pictures: these pages run no script at all. */
const policy =
  "default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'";

/** The whole text of a page. `styleFile` is the built style sheet's path in the site. */
export function pageText({ file, title, body }: Page, styleFile: string): string {
  const up = "../".repeat(file.split("/").length - 1);
  const link = (to: string, text: string) =>
    html`<a href="${up}${to}"${to === file ? html` aria-current="page"` : ""}>${text}</a>`;
  return html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="color-scheme" content="light dark">
<title>${title}${title === "Fanrow" ? "" : " · Fanrow"}</title>
<link rel="icon" href="${up}icons/icon-32.png">
<link rel="stylesheet" href="${up}${styleFile}">
</head>
<body>
<a class="skip" href="#content">Skip to the content</a>
<header>
<img src="${up}icons/icon-64.png" alt="" width="32" height="32">
<nav aria-label="Site">${link("index.html", "Fanrow")} ${link("firm.html", "For a firm")} ${link("support.html", "Support")} ${link("privacy.html", "Privacy")}</nav>
</header>
<main id="content">
${body}
</main>
</body>
</html>
`.markup;
}
