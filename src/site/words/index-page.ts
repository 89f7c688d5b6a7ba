import { helpFile, namespace } from "../../../functions";
import type { Descriptions } from "../help/page";
import { html } from "../html/escape";
import type { Page } from "../html/page";

export function indexPage(told: Descriptions): Page {
  return {
    file: "index.html",
    title: "Fanrow",
    body: html`<h1>Fanrow</h1>
<p>Worksheet functions and a sheet check for exhaust-fan flow-box jobs in Excel: opening areas, air flows, required rates and verdicts. This site is what Excel loads; everything runs on your own machine.</p>
<p>Without Excel: <a href="desk.html">the desk</a> opens a job in the browser, with the same functions and the same pane.</p>

<h2>Load the add-in</h2>
<p>To try it on one machine, run <code>npm run serve:excel</code>: it serves this folder at the address in the manifest and prints what to do next.</p>
<p>Excel finds the add-in through its <a href="manifest.xml">manifest</a>, and the manifest names the address of this site. <a href="firm.html">For a firm</a>: how to put the site on a server of your own, and bring the manifest to Windows, Mac and the web, step by step.</p>
<p class="quiet">The menus are Microsoft's and move from version to version: verify in your Excel.</p>

<h2>Which Excel</h2>
<p>Excel of Microsoft 365 on Windows (version 2008 or later) and Mac (16.40 or later), Excel 2021 and later, and Excel on the web. Excel 2019 and older, and Excel on an iPad, do not run custom functions: there a job opens with the values that were last worked out and cells to work out anew show <code>#NAME?</code>. Use <a href="desk.html">the desk</a>, or hand over the plain copy, which needs no add-in.</p>
<p class="quiet">In Microsoft's terms: SharedRuntime 1.1 and CustomFunctionsRuntime 1.3; the pane needs ExcelApi 1.13 as well.</p>

<h2>Functions</h2>
<dl>${Object.entries(told).map(
      ([id, [description]]) => html`
<dt><a href="${helpFile(id)}">${namespace}.${id}</a></dt>
<dd>${description}</dd>`,
    )}
</dl>

<h2>More</h2>
<ul>
<li><a href="support.html">Support: what to do when a cell shows an error</a></li>
<li><a href="privacy.html">Privacy: nothing leaves the machine</a></li>
</ul>`,
  };
}
