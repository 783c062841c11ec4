// The survey: its columns sort by buttons in their heads, its rows are narrowed by the form. Both stand in the address.
const table = document.querySelector(".survey-table");
const body = table.tBodies[0];
const heads = [...table.querySelectorAll("th[data-sort]")];
const form = document.querySelector("form.survey-finder");
const language = document.documentElement.lang;
const rows = [...body.rows].map((row, place) => ({ row, place, data: row.dataset }));
const asked = new URLSearchParams(location.search);
let sorted = { name: "clarity", down: false };

// What has no value comes last, whichever way round.
function compare(a, b, column, down) {
  const [one, other] = [a, b].map(({ row }) => row.cells[column].dataset.value);
  if (one === "" || other === "") return (one === "") - (other === "");
  const numbers = Number(one) - Number(other);
  const order = Number.isNaN(numbers) ? one.localeCompare(other, language) : numbers;
  return down ? -order : order;
}

function fits({ data }, values, words) {
  const first = values?.get("first");
  const study = values?.get("study");
  if (first && !data.first.split("|").includes(first)) return false;
  if (study && data.study !== study) return false;
  return globalThis.hasWords(` ${data.words}`, words);
}

function show() {
  const column = heads.findIndex((head) => head.dataset.sort === sorted.name);
  for (const [index, head] of heads.entries()) {
    if (index === column) head.setAttribute("aria-sort", sorted.down ? "descending" : "ascending");
    else head.removeAttribute("aria-sort");
  }
  const values = form && new FormData(form);
  const words = globalThis.foldWords(values?.get("q") ?? "");
  const ordered = [...rows].sort((a, b) => compare(a, b, column, sorted.down) || a.place - b.place);
  let count = 0;
  for (const item of ordered) {
    item.row.hidden = !fits(item, values, words);
    if (!item.row.hidden) count += 1;
  }
  body.append(...ordered.map(({ row }) => row));
  const query = new URLSearchParams([...(values ?? [])].filter(([, value]) => value));
  if (sorted.name !== "clarity" || sorted.down) query.set("sort", `${sorted.down ? "-" : ""}${sorted.name}`);
  history.replaceState(null, "", `${location.pathname}${query.size > 0 ? `?${query}` : ""}${location.hash}`);
  if (!form) return;
  const found = form.querySelector(".found");
  const number = new Intl.NumberFormat(language).format(count);
  found.textContent = count === rows.length ? found.dataset.all : found.dataset.found.replace("#", number);
  document.querySelector(".none-found").hidden = count > 0;
}

for (const head of heads) {
  const button = document.createElement("button");
  button.type = "button";
  button.append(...head.childNodes);
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
if (form) {
  for (const [name, value] of asked) {
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
}
if (asked.size > 0) show();
