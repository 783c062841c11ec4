// Floor 6. What a gallery calls its colours: a name that studies give a colour holds for every drawing that has it, as long
// as the study of that drawing says nothing else.
import type { Hex } from "../colour/colour.ts";
import { nameColour } from "../colour/colourname.ts";
import type { Study } from "../content/study/study.ts";
import { compareText } from "../problem/problem.ts";

/** Returns the one name of each colour that `studies` name: what most of them say, then the first in the alphabet. */
export function gatherNames(studies: readonly Pick<Study, "names">[]): ReadonlyMap<Hex, string> {
  const said = studies.flatMap(({ names }) => [...(names ?? [])]);
  const counts = new Map<string, number>();
  for (const [hex, name] of said) counts.set(hex + name, (counts.get(hex + name) ?? 0) + 1);
  const count = ([hex, name]: readonly [Hex, string]): number => counts.get(hex + name) ?? 0;
  return new Map(said.sort((one, other) => count(one) - count(other) || compareText(other[1], one[1])));
}

/**
 * Returns the names of `shared` for colours that stand in `text`, a drawing, or are `typed` in its study; without those
 * that the study may have typed by a word, so that what others write never changes what its words mean.
 */
export function pickNames(
  shared: ReadonlyMap<Hex, string>,
  text: string,
  typed = "",
): ReadonlyMap<Hex, string> {
  const words = typed.toLowerCase();
  const source = `${text.toLowerCase()} ${words}`;
  const isTyped = (hex: Hex, name: string): boolean =>
    [name.toLowerCase(), nameColour(hex).split(" ").at(-1) ?? ""].some((word) => words.includes(word));
  return new Map([...shared].filter(([hex, name]) => source.includes(hex) && !isTyped(hex, name)));
}

/** All in which a study may have typed a colour by a word: its change, focus, options, what is answered, its figures. */
export function listTyped({ change, focus, options, answers = [], body }: Study): string {
  return [
    change.replace,
    change.with,
    focus !== undefined && "colour" in focus ? focus.colour : "",
    ...options.flatMap((option) => [option.replace, option.with]),
    ...answers.flatMap((answer) => [answer.edge ?? "", answer.option ?? ""]),
    ...body
      .split("::figure{")
      .slice(1)
      .map((figure) => figure.slice(0, figure.indexOf("}"))),
  ].join(" ");
}
