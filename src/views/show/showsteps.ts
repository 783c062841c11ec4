// Floor 8. The steps of one study for a projector: one idea each, as its author wants them, with what a speaker says to each.
import type { StudyResult } from "../../analysis/result.ts";
import { showSteps } from "../../content/study/showstep.ts";
import type { Gallery } from "../../content/study/study.ts";
import type { Format } from "../../words/format.ts";
import { describeChange, sayChange } from "../../words/verdict.ts";
import { linkFrom } from "../address.ts";
import type { Plate } from "../plate.ts";
import { firstSentence } from "../renderprose.ts";
import { presentOptions } from "../study/optionsview.ts";
import { presentFigures } from "../study/studypage.ts";
import { tellChanges } from "./changesteps.ts";
import { tellLook } from "./flagsteps.ts";
import { tellOutcome } from "./outcomesteps.ts";
import { type Ground, type ShowStep, type Told, tellStep } from "./step.ts";

/**
 * The steps of a study on the page at `path`, those that its author leaves, in the author's order. A step that the study has
 * nothing for is left out. `prefix` begins each address.
 */
export function listSteps(
  result: StudyResult,
  gallery: Gallery,
  path: string,
  format: Format,
  prefix = "",
): readonly ShowStep[] {
  const { steps: wanted = showSteps, without = [], notes = {} } = result.study.show ?? {};
  const link = linkFrom(path);
  const told = tellAll({
    result,
    format,
    path,
    own: firstSentence(result.study.body, gallery.language),
    figures: presentFigures(result, gallery, link, format),
    options: presentOptions(result, link, format),
  });
  const isCalled = (step: Told, name: string) => step.name === name || (name === "tried" && isTried(step));
  const chosen = wanted.flatMap((name) => told.filter((step) => isCalled(step, name)));
  return [...new Set(chosen)]
    .filter((step) => !without.some((name) => isCalled(step, name)))
    .map((step, at, all) => ({
      ...step,
      speech: // Said to the step before, where the flag stands there already.
        step.name === "before" && all[at - 1]?.name === "the-flag" ? format.say("show.keep") : step.speech,
      anchor: `${prefix}${step.name}`,
      note: notes[step.name] ?? (step.name === "tried-1" ? notes["tried"] : undefined),
    }));
}

function isTried({ name }: Told): boolean {
  return name.startsWith("tried-");
}

function tellAll(ground: Ground): readonly Told[] {
  const { result, figures } = ground;
  const flag = (plate: Plate): ShowStep["picture"] => ({ kind: "flag", plate });
  const [was, is] = figures.plates;
  const name = result.study.flag ?? result.study.title;
  const { say } = ground.format;
  const change = describeChange(result, ground.format);
  return [
    tellStep(
      "the-flag",
      name,
      flag(was),
      say("show.original"),
      [say("show.thisIs", { name }), ground.own ?? ""].join(" ").trim(),
    ),
    ...tellLook(ground),
    ...tellChanges(ground),
    tellStep("before", say("show.before"), flag(was), say("show.original"), say("show.beforeSaid")),
    tellStep(
      "after",
      change,
      flag(is),
      say("show.redesign"),
      say("show.afterSaid", { change: sayChange(result, ground.format) }),
    ),
    ...tellOutcome(ground),
  ];
}
