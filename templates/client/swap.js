// A pair or several redesigns of one flag: one at a time, at the same pixels; by buttons, on the flag itself, with the arrow keys.
const swap = document.querySelector(".swap");
if (swap) {
  const plates = [...swap.querySelectorAll(".plate:not(.split)")];
  const images = plates.map((plate) => plate.querySelector("img"));
  const controls = swap.querySelector(".swap-controls");
  const [next, both, ...choices] = controls.querySelectorAll("button");
  const said = controls.querySelector("[role=status]");
  let shown = -1;
  // Both are ready to be drawn before either is shown alone. `at` is -1 for both.
  const show = async (at) => {
    shown = at;
    await Promise.allSettled(images.map((image) => image.decode()));
    if (shown !== at) return;
    const isMoved = (swap.dataset.shown === "both") !== at < 0;
    if (at < 0 && document.activeElement === both) next.focus({ preventScroll: true });
    swap.dataset.shown = at < 0 ? "both" : "one";
    for (const [index, plate] of plates.entries()) plate.classList.toggle("shown", index === at);
    for (const [index, choice] of choices.entries()) choice.setAttribute("aria-pressed", index === at);
    both.hidden = at < 0;
    said.textContent =
      at < 0
        ? controls.dataset.both
        : controls.dataset.alone.replace("{name}", plates[at].querySelector("figcaption span").textContent);
    if (isMoved) swap.scrollIntoView({ block: "nearest", behavior: "instant" });
  };
  const alternate = () => show((shown + 1) % plates.length);
  next.addEventListener("click", alternate);
  both.addEventListener("click", () => show(-1));
  for (const [at, choice] of choices.entries()) choice.addEventListener("click", () => show(at));
  for (const [at, image] of images.entries())
    image.addEventListener("click", () => (shown < 0 ? show(at) : alternate()));
  document.addEventListener("keydown", (event) => {
    const isTurned = document.dir === "rtl";
    const [back, on] = [Math.max(0, shown - 1), Math.min(plates.length - 1, shown < 0 ? 1 : shown + 1)];
    const at = { ArrowLeft: isTurned ? on : back, ArrowRight: isTurned ? back : on, Escape: -1 }[event.key];
    const { top, bottom } = swap.getBoundingClientRect();
    const isAway = bottom < 0 || top > innerHeight;
    const isOthers = event.altKey || event.ctrlKey || event.metaKey || event.shiftKey;
    if (at === undefined || at === shown || isAway || isOthers) return;
    // Fields and what scrolls sideways have arrow keys of their own.
    if (!event.target.closest("input, select, textarea, [tabindex='0']")) show(at);
  });
  swap.style.setProperty("--ratio", images[0].getAttribute("width") / images[0].getAttribute("height"));
  controls.hidden = false;
}
