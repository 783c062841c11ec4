// The list of studies: narrowed and ordered by the form above it. What is chosen stands in the address.
const form = document.querySelector("form.finder");
const list = document.querySelector(".catalogue");
const found = form.querySelector(".found");
const none = document.querySelector(".none-found");
const entries = [...list.children].map((entry, place) => ({ entry, place, data: entry.dataset }));
const language = document.documentElement.lang;

const titleOf = ({ entry }) => entry.querySelector("h2").textContent;
const numberOf = (text, missing) => (text === "" ? missing : Number(text));
const orders = {
  gain: (a, b) => numberOf(b.data.gain, -9) - numberOf(a.data.gain, -9),
  lost: (a, b) => numberOf(a.data.gain, 9) - numberOf(b.data.gain, 9),
  unclear: (a, b) => numberOf(a.data.after, 9) - numberOf(b.data.after, 9),
  title: (a, b) => titleOf(a).localeCompare(titleOf(b), language),
};

// The beginning of a word finds it; every word has to be found.
function fits({ data }, asked, words) {
  for (const [name, value] of asked) if (!data[name].split(" ").includes(value)) return false;
  const own = ` ${data.words}`;
  return words.every((word) => own.includes(` ${word}`));
}

function show() {
  const values = new FormData(form);
  const text = values.get("q").toLowerCase().normalize("NFC");
  const words = text.match(/[\p{L}\p{N}]+/gu) ?? [];
  const asked = ["status", "verdict", "tag", "author"]
    .map((name) => [name, values.get(name)])
    .filter(([, value]) => value);
  const order = orders[values.get("order")] ?? (() => 0);
  let count = 0;
  for (const item of [...entries].sort((a, b) => order(a, b) || a.place - b.place)) {
    item.entry.hidden = !fits(item, asked, words);
    if (!item.entry.hidden) count += 1;
    list.append(item.entry);
  }
  const number = new Intl.NumberFormat(language).format(count);
  found.textContent = count === entries.length ? found.dataset.all : found.dataset.found.replace("#", number);
  none.hidden = count > 0;
  const query = new URLSearchParams([...values].filter(([, value]) => value));
  history.replaceState(null, "", `${location.pathname}${query.size > 0 ? `?${query}` : ""}${location.hash}`);
}

for (const [name, value] of new URLSearchParams(location.search)) {
  const field = form.elements[name];
  if (!field) continue;
  field.value = value;
  if (field.selectedIndex === -1) field.selectedIndex = 0;
}
form.hidden = false;
form.addEventListener("input", show);
form.addEventListener("submit", (event) => {
  event.preventDefault();
  show();
});
// The fields are emptied after the event.
form.addEventListener("reset", () => setTimeout(show));
if (location.search !== "") show();
