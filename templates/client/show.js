// A study step by step: one step in the window at a time, by keys, buttons, taps and the address. Nothing moves by itself.
const steps = [...document.querySelectorAll(".show-step")];
const move = document.querySelector(".show-move");
if (steps.length > 0 && move) {
  const [back, next] = move.querySelectorAll("button");
  const said = move.querySelector("[role=status]");
  const find = () =>
    Math.max(
      0,
      steps.findIndex(({ id }) => `#${id}` === location.hash),
    );
  let at = -1;
  const show = (wanted) => {
    const index = Math.min(steps.length - 1, Math.max(0, wanted));
    if (index === at) return;
    at = index;
    for (const [place, step] of steps.entries()) step.hidden = place !== at;
    said.textContent = `${at + 1} / ${steps.length}`;
    back.disabled = at === 0;
    next.disabled = at === steps.length - 1;
    const address = `#${steps[at].id}`;
    if (location.hash !== address) history.replaceState(null, "", address);
    scrollTo({ top: 0, behavior: "instant" });
  };
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
    if (isPressed || (far === undefined && way === undefined)) return;
    event.preventDefault();
    show(far ?? at + way);
  });
  back.addEventListener("click", () => show(at - 1));
  next.addEventListener("click", () => show(at + 1));
  for (const step of steps)
    step.addEventListener("click", (event) => {
      if (event.target.closest("a, button, summary, [tabindex='0']")) return;
      const isBack = isTurned ? event.clientX > (innerWidth * 2) / 3 : event.clientX < innerWidth / 3;
      show(at + (isBack ? -1 : 1));
    });
  addEventListener("hashchange", () => show(find()));
  // The controls are for whoever moves the pointer or tabs to them.
  let resting;
  const wake = () => {
    document.body.classList.remove("show-quiet");
    clearTimeout(resting);
    resting = setTimeout(() => document.body.classList.add("show-quiet"), 3000);
  };
  for (const kind of ["pointermove", "pointerdown", "focusin"]) addEventListener(kind, wake);
  move.hidden = false;
  show(find());
  wake();
}
