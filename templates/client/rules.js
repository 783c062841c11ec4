// The rules: narrowed to those that have all the words typed, in their line or behind it.
const finder = document.querySelector(".rules-finder");
const found = finder.querySelector(".found");
const numbers = new Intl.NumberFormat(document.documentElement.lang);
const rules = [...document.querySelectorAll(".rule")].map((rule) => ({
  rule,
  words: ` ${globalThis.foldWords(rule.textContent).join(" ")}`,
}));

function show() {
  const sought = globalThis.foldWords(finder.querySelector("input").value);
  for (const { rule, words } of rules) rule.hidden = !globalThis.hasWords(words, sought);
  for (const chapter of document.querySelectorAll(".rules-chapter")) {
    chapter.hidden = chapter.querySelector(".rule:not([hidden])") === null;
    chapter.open = sought.length > 0;
  }
  const count = rules.filter(({ rule }) => !rule.hidden).length;
  found.textContent =
    count === rules.length ? found.dataset.all : found.dataset.found.replace("#", numbers.format(count));
}

finder.hidden = false;
finder.addEventListener("input", show);
