// A vote, one question at a time: the sides by a seed, the choice kept in this browser alone, and what is told once it is made.
// The order of sides, as src/views/vote/ballotsides.ts has it, and both forms of a ballot are for the tests too.
globalThis.orderSides = (seed, question, names) => {
  const hash = (text) => {
    let sum = 0x811c9dc5;
    for (const letter of text) sum = Math.imul(sum ^ letter.codePointAt(0), 0x01000193) >>> 0;
    return sum;
  };
  const keyed = names.map((name) => ({ name, key: hash(`${seed}/${question}/${name}`) }));
  return keyed.sort((a, b) => a.key - b.key || (a.name < b.name ? -1 : 1)).map(({ name }) => name);
};
globalThis.formatBallotLine = ({ id, series, votes }) =>
  [
    `ballot ${id} ${series}`,
    ...votes.map(({ study, choice, why }) => `${study}=${choice}${why ? ` ${JSON.stringify(why)}` : ""}`),
  ].join(" ");
globalThis.formatBallotTable = ({ id, series, votes }) => {
  // What a spreadsheet would compute gets an apostrophe before it. Source: OWASP, “CSV Injection”.
  const cell = (text) => `"${text.replace(/^[=+\-@]/, "'$&").replaceAll('"', '""')}"`;
  const rows = votes.map(({ study, choice, why }) => [id, series, study, choice, why ? cell(why) : ""]);
  return [["ballot", "series", "study", "choice", "why"], ...rows]
    .map((row) => `${row.join(",")}\r\n`)
    .join("");
};

const all = globalThis.document?.querySelector(".vote-all");
if (all) {
  const { series } = all.dataset;
  const questions = [...all.querySelectorAll("form.vote-question")];
  const ballot = all.querySelector(".vote-ballot");
  const move = all.querySelector(".vote-move");
  const [back, next] = move.querySelectorAll("button");
  const asked = new URLSearchParams(location.search).get("ballot");
  const given = /^[0-9a-z-]{1,100}$/i.test(asked ?? "") ? asked.toLowerCase() : undefined;
  const place = `counterchange-vote ${location.pathname} ${given ?? ""}`;
  const draw = (bytes) =>
    [...crypto.getRandomValues(new Uint8Array(bytes))]
      .map((one) => one.toString(16).padStart(2, "0"))
      .join("");
  // A study may be called as what every object has, “constructor”.
  const makeVotes = (kept) => Object.assign(Object.create(null), kept);
  const begin = () => ({ id: draw(8), seed: given ?? draw(2), votes: makeVotes() });
  const read = () => {
    // A browser may keep nothing, or have kept what somebody else put there.
    try {
      const kept = JSON.parse(localStorage.getItem(place));
      const isOurs = /^[0-9a-f]{16}$/.test(kept.id) && /^[0-9a-z-]{1,100}$/.test(kept.seed) && kept.votes;
      return isOurs ? { ...kept, votes: makeVotes(kept.votes) } : begin();
    } catch {
      return begin();
    }
  };
  const keep = () => {
    try {
      localStorage.setItem(place, JSON.stringify(state));
    } catch {
      // The ballot lasts as long as the page.
    }
  };
  let state = read();
  let at = -1;

  // Sentences stand in the page, in its language, with names in braces for what is put in.
  const fill = (text, values) => text.replace(/\{(\w+)\}/g, (_, name) => values[name]);
  const nextWord = next.textContent;
  const keyOf = (form) => form.dataset.question;
  const sidesOf = (form) => [...form.querySelectorAll(".vote-sides > [data-side]")];
  const nameOf = (form, side) =>
    [...form.querySelectorAll("tr[data-side]")]
      .find((row) => row.dataset.side === side)
      .querySelector(".vote-name").textContent;

  // Letters stand wherever a side is named: under its flag, in the numbers, in the key for paper.
  function arrange(form) {
    const key = keyOf(form);
    const sides = sidesOf(form);
    const order = globalThis.orderSides(
      state.seed,
      key,
      sides.map(({ dataset }) => dataset.side),
    );
    const places = [...all.querySelectorAll("[data-question]")].filter(
      ({ dataset }) => dataset.question === key,
    );
    for (const [index, side] of order.entries()) {
      form.querySelector(".vote-sides").append(sides.find(({ dataset }) => dataset.side === side));
      for (const one of places.flatMap((found) => [...found.querySelectorAll("[data-side]")])) {
        if (one.dataset.side !== side) continue;
        one.querySelector(".letter").textContent = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"[index];
        one.parentElement.append(one);
      }
    }
    for (const neither of form.querySelectorAll("tr[data-side=neither], .vote-none"))
      neither.parentElement.append(neither);
  }

  function showChoice(form) {
    const vote = state.votes[keyOf(form)];
    form.classList.toggle("vote-done", Boolean(vote));
    const told = form.querySelector(".vote-told");
    told.hidden = !vote;
    told.open = Boolean(vote);
    for (const input of form.querySelectorAll("input")) {
      input.hidden = false;
      input.disabled = Boolean(vote);
      if (input.type === "radio") input.checked = vote?.side === input.value;
      else input.value = vote?.why ?? "";
    }
    form.querySelector(".vote-answer").hidden = Boolean(vote);
    form.querySelector(".vote-none").hidden = false;
    for (const row of form.querySelectorAll("tr[data-side]"))
      row.querySelector(".vote-own").hidden = row.dataset.side !== vote?.side;
    for (const side of sidesOf(form)) {
      const { dataset } = side;
      const name = nameOf(form, dataset.side);
      const said = dataset.side === "original" ? name : fill(all.dataset.unofficial, { name });
      side.querySelector(".vote-said").textContent = vote ? said : "";
      side.classList.toggle("vote-mine", vote?.side === dataset.side);
    }
  }

  function listVotes() {
    return questions.flatMap((form) => {
      const vote = state.votes[keyOf(form)];
      if (!vote) return [];
      const isStudy = vote.side !== "original" && vote.side !== "neither";
      return [
        { study: isStudy ? vote.side : keyOf(form), choice: isStudy ? "redesign" : vote.side, why: vote.why },
      ];
    });
  }

  function showBallot() {
    const votes = listVotes();
    const made = { id: state.id, series, votes };
    const line = globalThis.formatBallotLine(made);
    const chosen = ballot.querySelector(".vote-chosen");
    chosen.replaceChildren(
      ...questions.map((form) => {
        const item = document.createElement("li");
        const vote = state.votes[keyOf(form)];
        const { unanswered, answer, answerWhy } = chosen.dataset;
        const choice = vote && nameOf(form, vote.side);
        const flag = form.querySelector("h2").textContent;
        const said = !vote ? unanswered : vote.why ? answerWhy : answer;
        item.append(fill(said, { flag, choice, why: vote?.why }));
        return item;
      }),
    );
    ballot.querySelector(".vote-line code").textContent = line;
    const save = ballot.querySelector(".vote-save");
    URL.revokeObjectURL(save.href);
    const table = new Blob([globalThis.formatBallotTable(made)], { type: "text/csv" });
    save.href = URL.createObjectURL(table);
    save.download = `ballot-${series}-${state.id.slice(0, 8)}.csv`;
    const send = ballot.querySelector(".vote-send");
    if (!send) return;
    send.dataset.template ??= send.getAttribute("href");
    send.href = send.dataset.template.replace("~ballot~", encodeURIComponent(line.toWellFormed?.() ?? line));
  }

  function show(wanted, isMoved = true) {
    at = Math.min(questions.length, Math.max(0, wanted));
    const isEnd = at === questions.length;
    for (const [index, form] of questions.entries()) form.hidden = index !== at;
    ballot.hidden = !isEnd;
    if (isEnd) showBallot();
    back.hidden = at === 0;
    next.hidden = isEnd;
    all.querySelector(".vote-how").hidden = at > 0;
    next.textContent = at === questions.length - 1 ? ballot.querySelector("h2").textContent : nextWord;
    const address = isEnd ? "#ballot" : `#${questions[at].id}`;
    if (isMoved) {
      history.replaceState(null, "", address);
      (isEnd ? ballot : questions[at]).querySelector("h2").focus({ preventScroll: true });
      all.scrollIntoView({ block: "start", behavior: "instant" });
    }
  }

  function start() {
    for (const form of questions) {
      // A study may have left the series since.
      const { side } = state.votes[keyOf(form)] ?? {};
      const inputs = [...form.querySelectorAll("input[type=radio]")];
      if (!inputs.some(({ value }) => value === side)) delete state.votes[keyOf(form)];
      arrange(form);
      showChoice(form);
      form.querySelector(".vote-missing").textContent = "";
    }
    const same = all.querySelector(".vote-same");
    same.querySelector(".vote-shared").href = `?ballot=${state.seed}`;
    same.hidden = false;
  }

  for (const form of questions) {
    for (const side of sidesOf(form))
      side.querySelector("img").addEventListener("click", () => {
        const input = side.querySelector("input");
        if (!input.disabled) input.click();
      });
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      const chosen = form.querySelector("input[type=radio]:checked");
      const missing = form.querySelector(".vote-missing");
      missing.textContent = chosen ? "" : all.dataset.missing;
      if (!chosen || state.votes[keyOf(form)]) return;
      const why = form.elements.why.value.replace(/\s+/g, " ").trim();
      state.votes[keyOf(form)] = { side: chosen.value, why };
      keep();
      showChoice(form);
      form.querySelector(".vote-told summary").focus({ preventScroll: true });
    });
  }
  back.addEventListener("click", () => show(at - 1));
  next.addEventListener("click", () => show(at + 1));
  ballot.querySelector(".vote-copy").addEventListener("click", async () => {
    const said = ballot.querySelector(".copied");
    const text = ballot.querySelector(".vote-line code").textContent;
    const done = await navigator.clipboard?.writeText(text).then(
      () => true,
      () => false,
    );
    said.textContent = done ? said.dataset.copied : said.dataset.refused;
  });
  ballot.querySelector(".vote-anew").addEventListener("click", () => {
    state = begin();
    keep();
    start();
    show(0);
  });
  const find = () => {
    const found = questions.findIndex(({ id }) => `#${id}` === location.hash);
    return location.hash === "#ballot" ? questions.length : found;
  };
  addEventListener("hashchange", () => {
    if (find() >= 0) show(find());
  });
  all.querySelector(".vote-unscripted").hidden = true;
  move.hidden = false;
  start();
  const first = questions.findIndex((form) => !state.votes[keyOf(form)]);
  show(find() >= 0 ? find() : first < 0 ? questions.length : first, false);
}
