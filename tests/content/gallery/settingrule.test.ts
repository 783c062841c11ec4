import { expect, test } from "vitest";
import { checkSettings } from "../../../src/content/gallery/settingrule.ts";

const rulesOf = (raw: Record<string, unknown>) =>
  checkSettings(raw).map(({ rule, path }) => `${path} ${rule}`);

test("settings as they should be, absent, empty or of another type are nothing to say a word about", () => {
  const good = { address: "https://flags.example/sound/", language: "cy", compareWith: "neighbours/coast" };
  expect(rulesOf({ ...good, cloth: { black: 5, white: 85 }, answer: "letters@flags.example" })).toEqual([]);
  expect(rulesOf({})).toEqual([]);
  expect(rulesOf({ address: "", language: 4, cloth: "dark", palette: [], compareWith: null })).toEqual([]);
});

test("every setting that is wrong is named once, with its rule", () => {
  expect(
    rulesOf({
      address: "flags.example",
      language: "Welsh",
      cloth: { black: 85, white: 5 },
      compareWith: "../elsewhere",
      answer: "letters at flags",
      licence: "free for all",
      palette: { "1st": "#ffffff", sea: "sea" },
    }),
  ).toEqual([
    "address study/wrong-address",
    "language study/wrong-language",
    "cloth study/wrong-cloth",
    "compareWith study/wrong-folder",
    "answer study/wrong-answer",
    "licence study/licence",
    "palette.1st study/wrong-palette",
    "palette.sea study/wrong-colour",
  ]);
  expect(rulesOf({ palette: {} })).toEqual(["palette study/wrong-palette"]);
});

test("what to type is what was meant, where that can be known", () => {
  const hintOf = (raw: Record<string, unknown>) => checkSettings(raw)[0]?.hint;
  expect(hintOf({ address: "flags.example/sound" })).toContain("address: https://flags.example/sound");
  expect(hintOf({ address: "https://a:b@flags.example/" })).toContain("address: https://flags.example/");
  expect(hintOf({ address: "https://flags.example/sound/?a=1#x" })).toBe(
    "Type: address: https://flags.example/sound/",
  );
  expect(hintOf({ language: "Welsh" })).toBe("Type: language: cy");
  expect(hintOf({ cloth: { black: 85, white: 5 } })).toBe("Type: cloth: { black: 5, white: 85 }");
  expect(hintOf({ cloth: { black: 20, white: 20 } })).toBe("Type: cloth: { black: 5, white: 85 }");
});
