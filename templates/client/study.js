// The pages of studies and edges: a word where the link was made for an earlier state, anchors that moved, and copying.
const note = document.querySelector(".stamp-note");
const stamp = new URLSearchParams(location.search).get("stamp");
if (note && /^[0-9a-f]{8}$/.test(stamp ?? "") && stamp !== note.dataset.stamp) {
  note.querySelector(".stamp-came").textContent = stamp;
  note.hidden = false;
}

// The other single changes stood here once, each with an anchor.
const changes = document.querySelector(".best-change a");
if (changes && /^#(?:change|tried)-/.test(location.hash)) location.replace(changes.href + location.hash);

const copying = document.querySelector(".copying");
if (copying && navigator.clipboard) {
  const said = copying.querySelector(".copied");
  for (const button of copying.querySelectorAll("button")) {
    button.addEventListener("click", async () => {
      said.textContent = "";
      const text = document.getElementById(button.value).textContent;
      const done = await navigator.clipboard.writeText(text).then(
        () => true,
        () => false,
      );
      said.textContent = done ? said.dataset.done : said.dataset.failed;
    });
  }
  copying.hidden = false;
}
