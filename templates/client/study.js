// The pages of studies and edges: a word where the link was made for an earlier state, and copying.
const note = document.querySelector(".stamp-note");
const stamp = new URLSearchParams(location.search).get("stamp");
if (note && /^[0-9a-f]{8}$/.test(stamp ?? "") && stamp !== note.dataset.stamp) {
  note.querySelector(".stamp-came").textContent = stamp;
  note.hidden = false;
}

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
      said.textContent = done ? "Copied." : "The browser did not allow it.";
    });
  }
  copying.hidden = false;
}
