// Opened from a disk, a link to a folder shows a list of files: name the page in it instead.
if (location.protocol === "file:") {
  for (const link of document.querySelectorAll("a[href]")) {
    const [address, fragment] = link.getAttribute("href").split("#");
    if (!address.endsWith("/") || address.includes(":")) continue;
    link.setAttribute("href", `${address}index.html${fragment === undefined ? "" : `#${fragment}`}`);
  }
  // A page that has moved would lead to the folder too: its link is faster.
  if (document.querySelector("meta[http-equiv=refresh]"))
    location.replace(document.querySelector("main a").href);
}
// A rule stands closed; where a browser does not open what an address names, this does.
function openNamed() {
  const closed = document.getElementById(location.hash.slice(1))?.closest("details");
  if (closed) closed.open = true;
}
addEventListener("hashchange", openNamed);
openNamed();
