import { expect, test } from "vitest";
import { presentAnswer } from "../../../src/views/study/answerview.ts";
import { createFormat } from "../../../src/words/format.ts";

const format = createFormat("en");

const stamped = "https://flags.example/sound/studies/a-square/?stamp=0123abcd";
const about = {
  title: "A lighter square",
  edge: undefined,
  stamped,
  numbers: ["Clarity: 74% → 100%"],
  isFiled: true,
} as const;
const mail = { way: "mail", address: "editor@flags.example" } as const;

/** Reads a mailto link as RFC 6068 says: fields parted by `&`, names and values percent-encoded. */
function readMail(href: string) {
  const [, to = "", query = ""] = /^mailto:([^?]*)\?(.*)$/.exec(href) ?? [];
  const fields = query.split("&").map((field) => field.split("=").map(decodeURIComponent));
  return { to: decodeURIComponent(to), fields: Object.fromEntries(fields) };
}

test("a gallery that takes no answers has no link", () => {
  expect(presentAnswer(undefined, about, format)).toBeUndefined();
});

test("a letter has the title as its subject, then the address with the stamp, the numbers, and an answer to fill in", () => {
  const view = presentAnswer(mail, about, format);
  // Encoded by hand after RFC 3986 and 6068: space %20, → is E2 86 92, a line ends with %0D%0A.
  expect(view?.href).toBe(
    "mailto:editor@flags.example?subject=A%20lighter%20square&body=A%20lighter%20square%0D%0A" +
      "https%3A%2F%2Fflags.example%2Fsound%2Fstudies%2Fa-square%2F%3Fstamp%3D0123abcd%0D%0A%0D%0A" +
      "Clarity%3A%2074%25%20%E2%86%92%20100%25%0D%0A%0D%0A" +
      "---%0D%0Aby%3A%20A%20reader%0D%0Asays%3A%20ask%0D%0A---%0D%0AWhy%3F%0D%0A",
  );
  expect(view?.words).toContain("editor@flags.example");
});

test("of an edge the subject names both", () => {
  const { fields } = readMail(presentAnswer(mail, { ...about, edge: "Dark blue / red" }, format)?.href ?? "");
  expect(fields.subject).toBe("Dark blue / red, in A lighter square");
});

test("nothing in a title adds a field, a recipient or a line of its own to the head of a letter", () => {
  const title = "A&cc=all@flags.example\r\nBcc: all@flags.example?#+%0A;";
  const href = presentAnswer(mail, { ...about, title }, format)?.href ?? "";
  const { to, fields } = readMail(href);
  expect(to).toBe("editor@flags.example");
  expect(Object.keys(fields)).toEqual(["subject", "body"]);
  expect(fields.subject).toBe(title);
  // RFC 6068, section 2, `qchar`: nothing else may stand in a field.
  expect(href).toMatch(/^mailto:[^?]+\?(?:[A-Za-z0-9\-._~!$'()*+,;:@=&]|%[0-9A-F]{2})+$/);
});

test("an address with signs of its own is encoded", () => {
  const view = presentAnswer({ way: "mail", address: "a&b?c+d@flags.example" }, about, format);
  expect(view?.href).toMatch(/^mailto:a%26b%3Fc%2Bd@flags\.example\?subject=/);
});

test("a form has its placeholders filled in, percent-encoded", () => {
  const template = "https://forum.example/new?title={title}&body={url}%0A{numbers}&edge={edge}#{title}";
  const view = presentAnswer(
    { way: "form", template },
    { ...about, title: "A & b=c #1", edge: "Red / blue" },
    format,
  );
  const url = new URL(view?.href ?? "");
  expect(url.host).toBe("forum.example");
  expect(Object.fromEntries(url.searchParams)).toEqual({
    title: "A & b=c #1",
    body: `${stamped}\nClarity: 74% → 100%`,
    edge: "Red / blue",
  });
  expect(url.hash).toBe("#A%20%26%20b%3Dc%20%231");
  expect(view?.words).toContain("forum.example");
});

test("what is filled in is not filled in again, and a study has no edge", () => {
  const view = presentAnswer(
    { way: "form", template: "https://forum.example/{edge}?t={title}" },
    { ...about, title: "{url}" },
    format,
  );
  expect(view?.href).toBe("https://forum.example/?t=%7Burl%7D");
});

test.each([
  ["{url}", "at forum.example, with the address of this page."],
  ["{url}%0A{numbers}", "at forum.example, with the address of this page and its numbers."],
  ["{numbers}", "at forum.example, with the numbers of this page."],
  ["{title}", "at forum.example."],
])("a form that is given %s is said to get that", (given, words) => {
  const view = presentAnswer(
    { way: "form", template: `https://forum.example/new?t=${given}` },
    about,
    format,
  );
  expect(view?.words).toBe(words);
});

test("half a letter does not stop the build", () => {
  expect(presentAnswer(mail, { ...about, title: "A \ud800 b" }, format)?.href).toContain(
    "subject=A%20%EF%BF%BD%20b&",
  );
});

test("a letter about something else than a study ends with its numbers", () => {
  const { isFiled: _, ...ballot } = about;
  expect(readMail(presentAnswer(mail, ballot, format)?.href ?? "").fields.body).toMatch(/100%\r\n\r\n$/);
});
