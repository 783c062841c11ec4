// Steps for a projector: one in the window at a time, by keys, buttons, taps, swipes and the address. Nothing moves by itself.
// A second window of the same page, `?notes`, goes along with the first, and the first with it.
const steps = [...document.querySelectorAll(".show-step")];
const move = document.querySelector(".show-move");
if (steps.length > 0 && move) {
  const button = (name) => move.querySelector(`[data-move=${name}]`);
  const [notes, back, next] = ["notes", "back", "next"].map(button);
  const said = move.querySelector("[role=status]");
  const isNotes = new URLSearchParams(location.search).has("notes");
  const others = new BroadcastChannel(`steps of ${location.pathname}`);
  let told;
  if (isNotes) {
    document.body.classList.add("show-notes");
    told = document.createElement("p");
    told.className = "show-told";
    document.querySelector("main").append(told);
    notes.hidden = true;
  }
  const find = (hash) =>
    Math.max(
      0,
      steps.findIndex(({ id }) => `#${id}` === hash),
    );
  let at = -1;
  const show = (wanted, isTold = true) => {
    const index = Math.min(steps.length - 1, Math.max(0, wanted));
    if (index === at) return;
    at = index;
    for (const [place, step] of steps.entries()) {
      const isNext = isNotes && place === at + 1;
      step.hidden = place !== at && !isNext;
      step.classList.toggle("next", isNext);
    }
    if (told) told.textContent = steps[at].querySelector(".show-note")?.textContent ?? move.dataset.noNote;
    said.textContent = `${at + 1} / ${steps.length}`;
    back.disabled = at === 0;
    next.disabled = at === steps.length - 1;
    const address = `#${steps[at].id}`;
    if (location.hash !== address) history.replaceState(null, "", address);
    if (isTold) others.postMessage(address);
    scrollTo({ top: 0, behavior: "instant" });
  };
  others.addEventListener("message", ({ data }) => show(find(data), false));
  const openNotes = () => open(`?notes${location.hash}`, "notes", "popup,width=1100,height=760");
  const isTurned = document.dir === "rtl";
  const ways = {
    ArrowRight: isTurned ? -1 : 1,
    ArrowLeft: isTurned ? 1 : -1,
    ArrowDown: 1,
    ArrowUp: -1,
    PageDown: 1,
    PageUp: -1,
    " ": 1,
  };
  document.addEventListener("keydown", (event) => {
    if (event.altKey || event.ctrlKey || event.metaKey || event.target.closest("[tabindex='0']")) return;
    const isPressed = event.key === " " && event.target.closest("button, a");
    const far = { Home: 0, End: steps.length - 1 }[event.key];
    const way = event.key === " " && event.shiftKey ? -1 : ways[event.key];
    if (event.key === "Escape") location.assign(document.querySelector(".show-ways a").href);
    if (event.key === "n" && !isNotes) openNotes();
    if (isPressed || (far === undefined && way === undefined)) return;
    event.preventDefault();
    show(far ?? at + way);
  });
  back.addEventListener("click", () => show(at - 1));
  next.addEventListener("click", () => show(at + 1));
  notes.addEventListener("click", openNotes);
  for (const step of steps)
    step.addEventListener("click", (event) => {
      if (event.target.closest("a, button, summary, [tabindex='0']")) return;
      const isBack = isTurned ? event.clientX > (innerWidth * 2) / 3 : event.clientX < innerWidth / 3;
      show(at + (isBack ? -1 : 1));
    });
  // A swipe goes where a page would be turned to; a browser makes no click of it.
  let from;
  addEventListener("touchstart", ({ touches }) => {
    from = touches.length === 1 ? touches[0] : undefined;
  });
  addEventListener("touchend", ({ changedTouches: [end] }) => {
    const across = from && end ? end.clientX - from.clientX : 0;
    if (Math.abs(across) < 50 || Math.abs(end.clientY - from.clientY) > Math.abs(across)) return;
    show(at + (across < 0 === isTurned ? -1 : 1));
  });
  addEventListener("hashchange", () => show(find(location.hash)));
  // The controls are for whoever moves the pointer or tabs to them.
  let resting;
  const wake = () => {
    document.body.classList.remove("show-quiet");
    clearTimeout(resting);
    if (!isNotes) resting = setTimeout(() => document.body.classList.add("show-quiet"), 3000);
  };
  for (const kind of ["pointermove", "pointerdown", "focusin"]) addEventListener(kind, wake);
  move.hidden = false;
  show(find(location.hash), false);
  wake();
}
