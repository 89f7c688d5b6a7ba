import { html } from "../html/escape";
import type { Page } from "../html/page";

export function privacyPage(): Page {
  return {
    file: "privacy.html",
    title: "Privacy",
    body: html`<h1>Privacy</h1>
<p><strong>Nothing leaves the machine.</strong> The functions and the check compute inside Excel. No reading, name, address or workbook is sent to this site or to anyone else.</p>
<h2>What is loaded</h2>
<ul>
<li>From this site: the page, the pane, the functions, their descriptions, the icons and these help pages. Whoever serves the site sees, as every web server does, that a machine has asked for those files.</li>
<li>From Microsoft: the library office.js, which every Office add-in must load from Microsoft's own network. What Office itself reports to Microsoft is set in Office's privacy settings, not here.</li>
</ul>
<h2>What is kept</h2>
<p>In the workbook: what you have the pane write there. On the machine, in the browser part of Excel: which of the pane's cautions you have put away. Nothing else: no account, no cookie, no usage figures.</p>`,
  };
}
