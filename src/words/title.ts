// Floor 7. What a study is called where a name has to stand alone: its flag, then its title.
import type { Format } from "./format.ts";

/** `The Kedgeport anchor: A gold anchor over two fields`, or the title alone where the study names no flag. */
export function formatTitle(
  { flag, title }: { readonly flag?: string | undefined; readonly title: string },
  { say }: Pick<Format, "say">,
): string {
  return flag === undefined ? title : say("list.colon", { name: flag, said: title });
}
