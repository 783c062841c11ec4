// Floor 11, for the command begin. Another study of a flag that is there: what it shares with the one that is named.
import { basename, join, relative } from "node:path";
import { loadGallery } from "../../content/folder/loadgallery.ts";
import { findNearest } from "../../problem/knownword.ts";
import { quoteText } from "../../problem/quote.ts";
import { type Given, UsageError } from "../command.ts";

/**
 * Returns what was typed, with the drawing of the study or of the file in flags/ that --rival names, and with what that study
 * calls its flag. `content` is the folder where none is named. Throws UsageError for a study that is not there, or has an error.
 */
export async function fillRival(given: Given, content: string): Promise<Given> {
  const { rival, original } = given.values;
  if (rival === undefined) return given;
  if (original !== undefined)
    throw new UsageError("begin takes --original or --rival, not both.", "Leave one of the two away.");
  const root = given.values["content"] ?? content;
  const fill = (values: Given["values"]): Given => ({ ...given, values: { ...values, ...given.values } });
  if (/\.svg$/i.test(rival)) return fill({ original: join(root, "flags", basename(rival)) });
  const { studies, folders } = await loadGallery(root);
  const study = studies.find(({ slug }) => slug === rival);
  if (study === undefined)
    throw folders.includes(rival)
      ? new UsageError(`The study ${quoteText(rival)} has an error.`, "Type: counterchange check")
      : missing(rival, folders);
  const { flag, originalPath } = study;
  return fill({ original: relative(process.cwd(), originalPath), ...(flag === undefined ? {} : { flag }) });
}

function missing(rival: string, folders: readonly string[]): UsageError {
  const near = findNearest(rival, folders);
  return new UsageError(
    `There is no study ${quoteText(rival)}.`,
    near === undefined
      ? "Type the name of a study's folder, or of a drawing in flags/: --rival harbour.svg"
      : `Type: --rival ${near}`,
  );
}
