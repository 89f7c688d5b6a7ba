// Shown by any web view, so written as the oldest of them reads it: no module, arrow or template. Where the view
// cannot run the page's modules, it says what is missing in their place.
function missing(page) {
  const lacks = [];
  if (!("noModule" in page.createElement("script"))) lacks.push("script modules");
  if (!Array.prototype.at) lacks.push("the language of 2022 (ES2022)");
  return lacks;
}

function tellOldView(page) {
  const lacks = missing(page);
  if (lacks.length === 0) return;
  const told = page.getElementById("old-view");
  const place = page.getElementById("old-view-lacks");
  const instead = page.getElementById(told.getAttribute("data-for"));
  place.appendChild(page.createTextNode(lacks.join(", ")));
  instead.setAttribute("hidden", "");
  told.removeAttribute("hidden");
}

tellOldView(document);
