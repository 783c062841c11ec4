// The list of studies: narrowed and ordered by the form above it. What is chosen stands in the address.
const form = document.querySelector("form.finder");
const list = document.querySelector(".catalogue");
const found = form.querySelector(".found");
const none = document.querySelector(".none-found");
const language = document.documentElement.lang;
const textOf = (entry, parts) => [...entry.querySelectorAll(parts)].map((part) => part.textContent).join(" ");
const entries = [...list.children].map((entry, place) => ({
  entry,
  place,
  data: entry.dataset,
  title: textOf(entry, "h2"),
  words: ` ${globalThis.foldWords(textOf(entry, "h2, .entry-change, .byline")).join(" ")}`,
}));
let shownOrder = "";
let isAsked = false;

const numberOf = (text, missing) => (text === "" ? missing : Number(text));
const orders = {
  gain: (a, b) => numberOf(b.data.gain, -9) - numberOf(a.data.gain, -9),
  lost: (a, b) => numberOf(a.data.gain, 9) - numberOf(b.data.gain, 9),
  unclear: (a, b) => numberOf(a.data.after, 9) - numberOf(b.data.after, 9),
  title: (a, b) => a.title.localeCompare(b.title, language),
};

// The words of prose, colours and outcomes are asked for once somebody searches: most readers never do.
function askWords() {
  if (isAsked) return;
  isAsked = true;
  const { wordsFile } = form.dataset;
  const trusted = globalThis.trustedTypes?.createPolicy("words", { createScriptURL: () => wordsFile });
  const script = document.createElement("script");
  script.src = trusted?.createScriptURL("") ?? wordsFile;
  script.addEventListener("load", () => {
    for (const item of entries) item.words += globalThis.studyWords[item.data.slug] ?? "";
    show();
  });
  document.head.append(script);
}

function fits({ data, words }, asked, sought) {
  for (const [name, value] of asked) if (!data[name].split(" ").includes(value)) return false;
  return globalThis.hasWords(words, sought);
}

function sort(name) {
  if (name === shownOrder) return;
  shownOrder = name;
  const order = orders[name] ?? (() => 0);
  list.append(...[...entries].sort((a, b) => order(a, b) || a.place - b.place).map(({ entry }) => entry));
}

function show() {
  const values = new FormData(form);
  const sought = globalThis.foldWords(values.get("q"));
  if (sought.length > 0) askWords();
  const asked = ["status", "verdict", "tag", "author"]
    .map((name) => [name, values.get(name)])
    .filter(([, value]) => value);
  sort(values.get("order"));
  let count = 0;
  for (const item of entries) {
    item.entry.hidden = !fits(item, asked, sought);
    if (!item.entry.hidden) count += 1;
  }
  const number = new Intl.NumberFormat(language).format(count);
  const said = count === entries.length ? found.dataset.all : found.dataset.found.replace("#", number);
  if (found.textContent !== said) found.textContent = said;
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
form.elements.q.addEventListener("focus", askWords);
form.addEventListener("input", show);
form.addEventListener("submit", (event) => {
  event.preventDefault();
  show();
});
// The fields are emptied after the event.
form.addEventListener("reset", () => setTimeout(show));
if (location.search !== "") show();
