// Floor 5. HTML in the prose of a study, which is shown letter for letter: the first tag, and what to write in its place.

/** A tag as it stands in the text, and what to write. */
export interface FoundHtml {
  readonly tag: string;
  readonly hint: string;
}

const tagPattern =
  /<!--|<\/?(a|abbr|b|big|blockquote|br|center|code|div|em|font|h[1-6]|hr|i|iframe|img|li|ol|p|s|script|small|span|strong|sub|sup|table|tbody|td|th|tr|u|ul|video)(?:\s[^<>]*)?\/?>/i;

const instead: Readonly<Record<string, string>> = {
  b: "Write **like this** for bold.",
  strong: "Write **like this** for bold.",
  i: "Write *like this* for italics.",
  em: "Write *like this* for italics.",
  a: "Write a link as [its text](https://flags.example/).",
  br: "Leave an empty line to begin a paragraph.",
  p: "Leave an empty line to begin a paragraph.",
  li: "Begin each item of a list with a hyphen and a space.",
  ul: "Begin each item of a list with a hyphen and a space.",
  ol: "Begin each item of a list with its number, a point and a space.",
  blockquote: "Begin each line of a quotation with > and a space.",
  img: "Leave the picture out; a study shows no pictures but the flags.",
};

/** Returns the first tag of HTML in `text`, or undefined. `text` is prose, without code. */
export function findHtml(text: string): FoundHtml | undefined {
  const found = tagPattern.exec(text);
  if (found === null) return undefined;
  const [tag, name = ""] = found;
  if (tag === "<!--")
    return { tag, hint: "Delete the comment: what is not for readers has no place in a study." };
  const heading = /^h([1-6])$/i.exec(name)?.[1];
  if (heading !== undefined)
    return { tag, hint: `Begin a heading with ${"#".repeat(Number(heading))} and a space.` };
  return { tag, hint: instead[name.toLowerCase()] ?? "Leave the tag out." };
}
