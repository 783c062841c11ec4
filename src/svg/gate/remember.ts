// Floor 2. What is found of a text, kept for when it is asked again: a drawing is read twice, and has its paths in both.

/** Characters of all texts that one function keeps; beyond it begins anew. A drawing has half as many. */
const mostCharacters = 2 ** 20;

/** Returns `find` with a memory of what it returned, which nobody may change. */
export function remember<T>(find: (text: string) => T): (text: string) => T {
  const known = new Map<string, T>();
  let characters = 0;
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    const found = find(text);
    if (characters + text.length > mostCharacters) {
      known.clear();
      characters = 0;
    }
    known.set(text, found);
    characters += text.length;
    return found;
  };
}
