import { expect, test } from "vitest";
import { checkNames, checkPart } from "../../../src/content/study/namerule.ts";

const rulesOf = (names: Readonly<Record<string, unknown>>) =>
  checkNames(names).map(({ rule, path, on }) => `${rule} ${path} ${on}`);

test.each([
  ["hex and name", { "#1b2a5c": "navy" }, []],
  ["any script, an apostrophe, a hyphen", { "#1b2a5c": "bleu d’outre-mer", "#ff0000": "κόκκινο" }, []],
  ["a key that is no colour", { "dark blue": "navy" }, ["study/wrong-colour names.dark blue key"]],
  ["a translucent key", { "#1b2a5c80": "navy" }, ["study/wrong-colour names.#1b2a5c80 key"]],
  ["a stroke in the name", { "#1b2a5c": "navy / blue" }, ["study/wrong-name names.#1b2a5c value"]],
  ["name and colour exchanged", { navy: "#1b2a5c" }, ["study/wrong-name names.navy value"]],
  ["two of one name", { "#1b2a5c": "navy", "#00f": " Navy" }, ["study/name-twice names.#00f value"]],
  ["one by two names", { "#00f": "navy", "#0000ff": "sea" }, ["study/name-twice names.#0000ff key"]],
  ["no text: the schema says so", { "#1b2a5c": 7, "#00f": "" }, []],
] as const)("%s", (_, names, rules) => {
  expect(rulesOf(names)).toEqual(rules);
});

test("exchanged, the line is typed the right way round", () => {
  expect(checkNames({ navy: "#1b2a5c" })[0]?.hint).toBe('Turn them round: "#1b2a5c": navy');
});

test("a part needs the shapes that it names, and a name like any other", () => {
  expect(checkPart("change", { part: "the wheel", only: "#wheel" })).toEqual([]);
  expect(checkPart("change", { only: "#wheel" })).toEqual([]);
  expect(checkPart("options.1", { part: "the wheel" })[0]).toMatchObject({
    rule: "study/part-alone",
    path: "options.1.part",
    on: "key",
  });
  expect(checkPart("change", { part: "<b>", only: "#wheel" })[0]?.rule).toBe("study/wrong-name");
});
