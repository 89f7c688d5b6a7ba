import { namespace, worksheetFunctions } from "../../../functions";
import { helpFile } from "../help/page";
import { html } from "../html/escape";
import type { Page } from "../html/page";

export function indexPage(): Page {
  return {
    file: "index.html",
    title: "Fanrow",
    body: html`<h1>Fanrow</h1>
<p>Worksheet functions and a sheet check for exhaust-fan flow-box jobs in Excel: opening areas, air flows, required rates and verdicts. This site is what Excel loads; everything runs on your own machine.</p>
<p>Without Excel: <a href="desk.html">the desk</a> opens a job in the browser, with the same functions and the same pane.</p>

<h2>Load the add-in</h2>
<p>To try it on one machine, run <code>npm run serve:excel</code>: it serves this folder at the address in the manifest and prints what to do next.</p>
<p>Excel finds the add-in through its <a href="manifest.xml">manifest</a>, and the manifest names the address of this site. That address must answer over https with a certificate that the machine trusts.</p>
<ol>
<li>Serve this folder at the address in the manifest. For your own address, make the manifest anew: <code>npm run manifest -- https://fans.example.org/fanrow/</code></li>
<li>Give the manifest to Excel:
<ul>
<li><strong>A firm:</strong> the administrator uploads it in the Microsoft 365 admin centre, under Integrated apps.</li>
<li><strong>Excel on the web, for a trial:</strong> Add-ins, More add-ins, My add-ins, Upload my add-in.</li>
<li><strong>Windows, for a trial:</strong> put it in a shared folder and name that folder under File, Options, Trust Center, Trusted Add-in Catalogs; then Add-ins, Shared folder.</li>
<li><strong>Mac, for a trial:</strong> copy it to <code>~/Library/Containers/com.microsoft.Excel/Data/Documents/wef</code> and start Excel anew.</li>
</ul></li>
<li>Type <code>=${namespace}.FLOW(24, 4)</code> into a cell. It gives 51.36. On the Home tab, the group Fanrow shows the pane and checks the open workbook; a right click on a cell leads to the rates for its row.</li>
</ol>
<p class="quiet">The menus are Microsoft's and move from version to version: verify in your Excel. It must know shared runtimes and custom functions (SharedRuntime 1.1, CustomFunctionsRuntime 1.1); the pane needs ExcelApi 1.13 as well.</p>

<h2>What the server must send</h2>
<ul>
<li><code>Access-Control-Allow-Origin: *</code> with <code>functions.json</code></li>
<li><code>Cache-Control: no-cache</code> with <code>.html</code>, <code>.json</code> and <code>functions.js</code></li>
<li>no <code>X-Frame-Options</code>: Excel on the web shows the add-in in a frame. To say who may, send <code>Content-Security-Policy: frame-ancestors</code> with Office's hosts; <code>npm run serve:excel</code> sends one to start from</li>
<li>files under <code>assets/</code> may be kept for good: their names change with their content</li>
</ul>

<h2>Functions</h2>
<dl>${worksheetFunctions.map(
      ({ id, description }) => html`
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
