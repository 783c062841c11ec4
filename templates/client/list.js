// The list of studies: narrowed and ordered by the form above it. What is chosen stands in the address.
const form = document.querySelector("form.finder");
const lists = [...document.querySelectorAll("[data-list]")];
const more = document.querySelector(".gain details");
const found = form.querySelector(".found");
const none = document.querySelector(".none-found");
const pages = document.querySelector(".pages-found");
const language = document.documentElement.lang;
const textOf = (entry, parts) => [...entry.querySelectorAll(parts)].map((part) => part.textContent).join(" ");
const entries = lists
  .flatMap((list) => [...list.children])
  .map((entry, place) => ({
    entry,
    place,
    data: entry.dataset,
    title: textOf(entry, ".gain-link"),
    words: ` ${globalThis.foldWords(textOf(entry, ".gain-name > *, .gain-verdict")).join(" ")}`,
  }));
const atOnce = lists[0].children.length;
// As the page comes: what is laid anew loses the keyboard's place.
let shown = " false";
let isAsked = false;

const numberOf = (text, missing) => (text === "" ? missing : Number(text));
const orders = {
  new: (a, b) => b.data.date.localeCompare(a.data.date),
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

// Where anything is asked, all that fits stands in one list; else the chart is as long as the page has made it.
function arrange(name, isAsked) {
  if (shown === `${name} ${isAsked}`) return;
  shown = `${name} ${isAsked}`;
  const order = orders[name] ?? (() => 0);
  const sorted = [...entries].sort((a, b) => order(a, b) || a.place - b.place).map(({ entry }) => entry);
  lists[0].append(...(isAsked ? sorted : sorted.slice(0, atOnce)));
  if (more === null) return;
  more.hidden = isAsked;
  if (!isAsked) lists[1].append(...sorted.slice(atOnce));
}

// The gallery's own pages that have the words.
function showPages(sought) {
  const all = sought.length > 0 ? (globalThis.pageWords ?? []) : [];
  const links = all
    .filter(({ words }) => globalThis.hasWords(words, sought))
    .map(({ title, address }) =>
      Object.assign(document.createElement("a"), { href: address, textContent: title }),
    );
  pages.hidden = links.length === 0;
  pages.lastElementChild.replaceChildren(...links.flatMap((link, at) => (at > 0 ? [" · ", link] : [link])));
}

function show() {
  const values = new FormData(form);
  const sought = globalThis.foldWords(values.get("q"));
  if (sought.length > 0) askWords();
  const asked = ["status", "verdict", "tag", "author"]
    .map((name) => [name, values.get(name)])
    .filter(([, value]) => value);
  arrange(values.get("order"), asked.length > 0 || sought.length > 0);
  let count = 0;
  for (const item of entries) {
    item.entry.hidden = !fits(item, asked, sought);
    if (!item.entry.hidden) count += 1;
  }
  const number = new Intl.NumberFormat(language).format(count);
  const said = count === entries.length ? found.dataset.all : found.dataset.found.replace("#", number);
  if (found.textContent !== said) found.textContent = said;
  none.hidden = count > 0;
  showPages(sought);
  const query = new URLSearchParams([...values].filter(([, value]) => value));
  history.replaceState(null, "", `${location.pathname}${query.size > 0 ? `?${query}` : ""}${location.hash}`);
}

for (const [name, value] of new URLSearchParams(location.search)) {
  const field = form.elements.namedItem(name);
  if (!field) continue;
  field.value = value;
  if (field.selectedIndex === -1) field.selectedIndex = 0;
  // What narrows the list has to be seen.
  const folded = field.closest("details");
  if (folded && field.value !== "") folded.open = true;
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
