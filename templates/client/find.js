// Words that readers look for, before the scripts of the list and of the survey, which call both functions.

// Small letters without their marks, as the words of studies and flags are written.
globalThis.foldWords = (text) =>
  text
    .toLowerCase()
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .match(/[\p{L}\p{N}]+/gu) ?? [];

// The beginning of a word finds it; every word has to be found. Some scripts put no space between words. Before each of
// `words` stands a space.
globalThis.hasWords = (words, sought) =>
  sought.every((word) =>
    words.includes(/[\p{sc=Han}\p{sc=Hira}\p{sc=Kana}\p{sc=Thai}]/u.test(word) ? word : ` ${word}`),
  );
