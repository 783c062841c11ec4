// Floor 9. A file of the site: where it goes, and how it is made once somebody asks for it.

export interface SiteFile {
  /** From the top of the site, with `/` between folders and none before: `studies/a-wheel/original.svg`. */
  readonly path: string;
  /** Makes the bytes, the same ones each time. Text is UTF-8. */
  make(): Promise<string | Uint8Array>;
  /** Where the bytes take long to make: all that they are made from, or undefined where that cannot be said. */
  readonly findRecipe?: () => Promise<unknown>;
  /** What is published in place of bytes that could not be made; without it the build stops there. */
  readonly spare?: () => Promise<Uint8Array>;
}

/** Returns a file of bytes or text; `make` is called when the file is asked for. */
export function fileOf(
  sitePath: string,
  make: () => string | Uint8Array | Promise<string | Uint8Array>,
): SiteFile {
  return { path: sitePath.replace(/^\/+/, ""), make: async () => make() };
}

/** Returns a function that makes its value at the first call and keeps it: files of one study share a rendering. */
export function once<T>(make: () => Promise<T>): () => Promise<T> {
  let made: Promise<T> | undefined;
  return () => {
    made ??= make();
    return made;
  };
}
