// The survey: its columns sort by buttons in their heads, its rows are narrowed by the form or to those that were chosen.
// All of that stands in the address.
const list = document.querySelector(".survey-list");
const more = list.querySelector(".survey-more");
const bodies = [...list.querySelectorAll("tbody")];
const heads = [...list.querySelector(".survey-table").querySelectorAll("th[data-sort]")];
const form = document.querySelector("form.survey-finder");
const bar = list.querySelector(".chosen-bar");
const language = document.documentElement.lang;
const numbers = new Intl.NumberFormat(language);
const categories = new Intl.PluralRules(language);
const rows = bodies
  .flatMap((body) => [...body.rows])
  .map((row, place) => ({ row, place, data: row.dataset, box: row.querySelector(".choose") }));
const atOnce = bodies[0].rows.length;
const asked = new URLSearchParams(location.search);
const keyOf = ({ row }) => row.id.replace(/^flag-/, "");
let sorted = { name: "clarity", down: false };
// Those that the address names; undefined where it names none.
let only = asked.has("flags") ? new Set(asked.get("flags").split(" ")) : undefined;

// What has no value comes last, whichever way round.
function compare(a, b, column, down) {
  const [one, other] = [a, b].map(({ row }) => row.cells[column].dataset.value);
  if (one === "" || other === "") return (one === "") - (other === "");
  const difference = Number(one) - Number(other);
  const order = Number.isNaN(difference) ? one.localeCompare(other, language) : difference;
  return down ? -order : order;
}

function fits(item, values, words) {
  const { data } = item;
  const first = values?.get("first");
  const study = values?.get("study");
  if (only && !only.has(keyOf(item))) return false;
  if (first && !data.first.split("|").includes(first)) return false;
  if (study && data.study !== study) return false;
  return globalThis.hasWords(` ${data.words}`, words);
}

// Where anything is asked, all that fits stands in one list; else the list is as long as the page has made it.
function arrange(ordered, isNarrowed) {
  const shown = isNarrowed || !more ? ordered : ordered.slice(0, atOnce);
  bodies[0].append(...shown.map(({ row }) => row));
  if (!more) return;
  bodies[1].append(...ordered.slice(shown.length).map(({ row }) => row));
  more.hidden = isNarrowed;
}

function show() {
  const column = heads.findIndex((head) => head.dataset.sort === sorted.name);
  for (const [index, head] of heads.entries()) {
    if (index === column) head.setAttribute("aria-sort", sorted.down ? "descending" : "ascending");
    else head.removeAttribute("aria-sort");
  }
  const values = form && new FormData(form);
  const words = globalThis.foldWords(values?.get("q") ?? "");
  const query = new URLSearchParams([...(values ?? [])].filter(([, value]) => value));
  if (only) query.set("flags", [...only].join(" "));
  const ordered = [...rows].sort((a, b) => compare(a, b, column, sorted.down) || a.place - b.place);
  arrange(ordered, query.size > 0);
  let count = 0;
  for (const item of rows) {
    item.row.hidden = !fits(item, values, words);
    if (!item.row.hidden) count += 1;
  }
  showField();
  if (sorted.name !== "clarity" || sorted.down) query.set("sort", `${sorted.down ? "-" : ""}${sorted.name}`);
  history.replaceState(null, "", `${location.pathname}${query.size > 0 ? `?${query}` : ""}${location.hash}`);
  showChosen();
  if (!form) return;
  const found = form.querySelector(".found");
  found.textContent =
    count === rows.length ? found.dataset.all : found.dataset.found.replace("#", numbers.format(count));
  document.querySelector(".none-found").hidden = count > 0;
}

function showField() {
  for (const dot of document.querySelectorAll(".dot"))
    dot.parentElement.hidden = only ? !only.has(dot.hash.replace(/^#flag-/, "")) : false;
  for (const step of document.querySelectorAll(".field-rows > li"))
    step.classList.toggle("bare", step.querySelector(".field-dots > li:not([hidden])") === null);
}

// What the file says of one flag: its name, its drawing, every cell with its head, and how to begin a study of it.
function tell({ row, data }) {
  const textOf = (element) => element.textContent.replace(/\s+/g, " ").trim();
  const { line } = bar.querySelector(".chosen-file").dataset;
  const values = (cell) => ({ name: cell.dataset.head, said: textOf(cell) });
  const cells = [...row.querySelectorAll("td")].map(
    (cell) => `  ${line.replace(/\{(name|said)\}/g, (_, value) => values(cell)[value])}`,
  );
  const begin = data.slug ? [`  counterchange begin ${data.slug} --original "${data.file}"`] : [];
  return [textOf(row.querySelector(".flag-name")), `  ${data.file}`, ...cells, ...begin].join("\n");
}

// A series of the chosen flags, as it can be put into content/series/: studies by their names, other flags by their drawings.
function tellSeries(chosen) {
  const entries = chosen.map(({ row, data }) => {
    if (data.entry) return `  - ${data.entry}`;
    const name = row.querySelector(".flag-name").textContent.replace(/\s+/g, " ").trim();
    return `  - flag: /${data.file}\n    name: ${JSON.stringify(name)}`;
  });
  const { title, note, closing } = bar.querySelector(".chosen-series").dataset;
  const head = ["---", `title: ${JSON.stringify(title)}`, "studies:"];
  const end = [`# ${note}`, `closing: ${JSON.stringify(closing)}`, "---", ""];
  return [...head, ...entries, ...end].join("\n");
}

function offer(link, text) {
  URL.revokeObjectURL(link.href);
  link.hidden = text === "";
  if (text !== "") link.href = URL.createObjectURL(new Blob([text], { type: "text/plain" }));
}

function showChosen() {
  const chosen = rows.filter(({ box }) => box.checked);
  const keys = chosen.map(keyOf);
  const status = bar.querySelector("[role=status]");
  const said = status.dataset[categories.select(chosen.length)] ?? status.dataset.other;
  status.textContent = chosen.length === 0 ? "" : said.replace("#", numbers.format(chosen.length));
  bar.hidden = chosen.length === 0 && !only;
  const link = bar.querySelector(".chosen-only");
  link.href = `?${new URLSearchParams({ flags: keys.join(" ") })}`;
  link.hidden = keys.length === 0 || (keys.length === only?.size && keys.every((key) => only.has(key)));
  bar.querySelector(".chosen-all").hidden = !only;
  const file = bar.querySelector(".chosen-file");
  bar.querySelector("button").hidden = keys.length === 0;
  offer(file, keys.length === 0 ? "" : `${[file.dataset.head, ...chosen.map(tell)].join("\n\n")}\n`);
  // A series holds a hundred.
  const isSeries = keys.length > 0 && keys.length <= 100;
  offer(bar.querySelector(".chosen-series"), isSeries ? tellSeries(chosen) : "");
}

for (const head of heads) {
  const button = document.createElement("button");
  button.type = "button";
  button.append(head.lastChild);
  head.append(button);
  button.addEventListener("click", () => {
    const name = head.dataset.sort;
    sorted = { name, down: name === sorted.name && !sorted.down };
    show();
  });
}
const wanted = asked.get("sort")?.match(/^(-?)(\w+)$/);
if (wanted && heads.some((head) => head.dataset.sort === wanted[2])) {
  sorted = { name: wanted[2], down: wanted[1] === "-" };
}
for (const head of list.querySelectorAll(".choose-head")) head.hidden = false;
for (const item of rows) {
  item.box.hidden = false;
  item.box.checked = only?.has(keyOf(item)) ?? false;
}
list.addEventListener("change", showChosen);
bar.querySelector("button").addEventListener("click", () => {
  for (const { box } of rows) box.checked = false;
  showChosen();
  heads[0].querySelector("button").focus();
});
if (form) {
  for (const [name, value] of asked) {
    const field = form.elements.namedItem(name);
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
  form.addEventListener("reset", () => {
    only = undefined;
    setTimeout(show);
  });
}
if (asked.size > 0) show();
