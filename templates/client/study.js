// The pages of studies and edges: one box for both flags, a word where the link was made for an earlier state, anchors that moved, and copying.
const query = new URLSearchParams(location.search);

const note = document.querySelector(".stamp-note");
const stamp = query.get("stamp");
if (note && /^[0-9a-f]{8}$/.test(stamp ?? "") && stamp !== note.dataset.stamp) {
  note.querySelector(".stamp-came").textContent = stamp;
  note.hidden = false;
}

// The other single changes stood here once, each with an anchor.
const changes = document.querySelector(".best-change a");
if (changes && /^#(?:change|tried)-/.test(location.hash)) location.replace(changes.href + location.hash);

const wipe = document.querySelector(".wipe");
if (wipe) {
  const range = wipe.querySelector("input");
  const box = wipe.querySelector(".wipe-box");
  const buttons = [...wipe.querySelectorAll("button")];
  const words = { 0: "Original only", 50: "Half original, half redesign", 100: "Redesign only" };
  const show = () => {
    const { value } = range;
    box.style.setProperty("--shown", `${value}%`);
    range.setAttribute("aria-valuetext", words[value] ?? `${value} percent redesign`);
    for (const button of buttons) button.setAttribute("aria-pressed", String(button.value === value));
  };
  const keep = () => {
    query.set("wipe", range.value);
    history.replaceState(null, "", `${location.pathname}?${query}${location.hash}`);
  };
  const set = (value) => {
    range.value = value;
    show();
  };
  // On the flag itself: where the pointer is, counted from the side that lines begin on.
  const follow = ({ clientX }) => {
    const { left, right, width } = box.getBoundingClientRect();
    const across = document.dir === "rtl" ? right - clientX : clientX - left;
    set(Math.round((100 * across) / width));
  };
  box.addEventListener("pointerdown", (event) => {
    if (event.button !== 0) return;
    box.setPointerCapture(event.pointerId);
    follow(event);
  });
  box.addEventListener("pointermove", (event) => {
    if (box.hasPointerCapture(event.pointerId)) follow(event);
  });
  box.addEventListener("pointerup", keep);
  for (const button of buttons) {
    button.addEventListener("click", () => {
      set(button.value);
      keep();
    });
  }
  range.addEventListener("input", show);
  range.addEventListener("change", keep);
  const asked = query.get("wipe") ?? "";
  if (/^\d{1,3}$/.test(asked)) range.value = asked;
  show();
  wipe.hidden = false;
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
