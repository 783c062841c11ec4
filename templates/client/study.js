// A study's page: one box for both flags, and a word where the link was made for an earlier state.
const query = new URLSearchParams(location.search);

const note = document.querySelector(".stamp-note");
const stamp = query.get("stamp");
if (note && stamp !== null && stamp !== note.dataset.stamp) note.hidden = false;

const wipe = document.querySelector(".wipe");
if (wipe) {
  const range = wipe.querySelector("input");
  const over = wipe.querySelector(".wipe-over");
  const buttons = [...wipe.querySelectorAll("button")];
  const words = { 0: "Original only", 50: "Half original, half redesign", 100: "Redesign only" };
  const show = () => {
    const { value } = range;
    over.style.setProperty("--shown", `${value}%`);
    range.setAttribute("aria-valuetext", words[value] ?? `${value} percent redesign`);
    for (const button of buttons) button.setAttribute("aria-pressed", String(button.value === value));
  };
  const keep = () => {
    query.set("wipe", range.value);
    history.replaceState(null, "", `${location.pathname}?${query}${location.hash}`);
  };
  for (const button of buttons) {
    button.addEventListener("click", () => {
      range.value = button.value;
      show();
      keep();
    });
  }
  range.addEventListener("input", show);
  range.addEventListener("change", keep);
  if (/^\d{1,3}$/.test(query.get("wipe") ?? "")) range.value = query.get("wipe");
  show();
  wipe.hidden = false;
}
