import { expect, test } from "vitest";
import { numberOf, parseArguments } from "../../src/cli/arguments.ts";
import { type Command, UsageError } from "../../src/cli/command.ts";
import { commands } from "../../src/cli/commands.ts";

const command: Command = {
  name: "try",
  usage: "FILE [--with B] [--json]",
  summary: "",
  examples: [],
  operands: [1, 2],
  options: { with: { value: "B", help: "" }, json: { help: "" } },
  load: async () => ({ run: async () => 0 }),
};
const parse = (...words: string[]) => parseArguments(command, words);

test("operands, values and switches, in any order and either spelling", () => {
  const expected = { operands: ["a", "b"], values: { with: "#fff" }, switches: new Set(["json"]) };
  expect(parse("a", "--with", "#fff", "--json", "b")).toEqual(expected);
  expect(parse("--json", "--with=#fff", "a", "b")).toEqual(expected);
});

test("behind -- everything is an operand", () => {
  expect(parse("--", "--json", "-x")).toMatchObject({ operands: ["--json", "-x"] });
});

test.each([
  ["--__proto__", "a"],
  ["--constructor", "a"],
  ["-j", "a"],
  ["a", "--no-json"],
  ["a", "--with"],
  ["a", "--with="],
  ["a", "--with", "--json"],
  ["a", "--json=1"],
  ["a", "--with", "x", "--with", "y"],
  [],
  ["a", "b", "c"],
])("%j is wrong use", (...words) => {
  expect(() => parse(...words.flat())).toThrow(UsageError);
});

test.each(["replace", "with", "only", "focus"])(
  "--%s without a value: most likely a # without quotes",
  (name) => {
    const hashed = { ...command, options: { [name]: { value: "X", help: "" } } };
    expect(() => parseArguments(hashed, ["a", `--${name}`])).toThrow(
      /From a # on, a shell passes nothing on/,
    );
    // What is there but looks like an option was not cut off.
    expect(() => parseArguments(hashed, ["a", `--${name}`, "--json"])).toThrow(
      /^--\w+ needs a value behind it\.$/,
    );
  },
);

test("a value may begin with a hyphen where = says so", () => {
  expect(parse("a", "--with=-x").values).toEqual({ with: "-x" });
});

test.each(["0", "40", "12.5", "1000"])("%s is a number in the range", (text) => {
  const given = { operands: [], values: { n: text }, switches: new Set<string>() };
  expect(numberOf(given, "n", [0, 1000], 40)).toBe(Number(text));
});

test.each(["", "-1", "1001", "1e2", "0x10", "NaN", "Infinity", "4 0", "40px"])("%j is not", (text) => {
  const given = { operands: [], values: { n: text }, switches: new Set<string>() };
  expect(() => numberOf(given, "n", [0, 1000], 40)).toThrow(UsageError);
});

test("what is not given has its default", () => {
  expect(numberOf({ operands: [], values: {}, switches: new Set() }, "n", [0, 1], 0.5)).toBe(0.5);
});

test("a drawing without --original is put where begin takes it", () => {
  const begin = commands.find(({ name }) => name === "begin");
  if (begin === undefined) throw new Error("there is no command begin");
  try {
    parseArguments(begin, ["heron", "my flag.svg"]);
  } catch (error) {
    expect(error).toMatchObject({
      message: "begin does not know what “my flag.svg” is for: the drawing stands behind --original.",
      hint: "Type: counterchange begin heron --original 'my flag.svg'",
    });
  }
  expect.assertions(1);
});
