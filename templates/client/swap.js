// The pair of a study: one flag at a time, at the same pixels; by the button, on the flag itself, and with the arrow keys.
const swap = document.querySelector(".swap");
if (swap) {
  const names = ["original", "redesign"];
  const plates = [...swap.querySelectorAll(".plate:not(.split)")];
  const images = plates.map((plate) => plate.querySelector("img"));
  const controls = swap.querySelector(".swap-controls");
  const [next, both] = controls.querySelectorAll("button");
  const said = controls.querySelector("[role=status]");
  let shown = -1;
  // Both are ready to be drawn before either is shown alone. `at` is -1 for both.
  const show = async (at) => {
    shown = at;
    await Promise.allSettled(images.map((image) => image.decode()));
    if (shown !== at) return;
    const isMoved = (swap.dataset.shown === "both") !== at < 0;
    if (at < 0 && document.activeElement === both) next.focus({ preventScroll: true });
    swap.dataset.shown = names[at] ?? "both";
    both.hidden = at < 0;
    said.textContent =
      at < 0 ? "Both flags shown" : `${plates[at].querySelector("figcaption span").textContent} shown alone`;
    if (isMoved) swap.scrollIntoView({ block: "nearest", behavior: "instant" });
  };
  const alternate = () => show(shown === 0 ? 1 : 0);
  next.addEventListener("click", alternate);
  both.addEventListener("click", () => show(-1));
  for (const [at, image] of images.entries())
    image.addEventListener("click", () => (shown < 0 ? show(at) : alternate()));
  document.addEventListener("keydown", (event) => {
    const isTurned = document.dir === "rtl";
    const at = { ArrowLeft: isTurned ? 1 : 0, ArrowRight: isTurned ? 0 : 1, Escape: -1 }[event.key];
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
