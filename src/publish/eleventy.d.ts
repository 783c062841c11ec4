// Floor 9. The part of Eleventy 3.1 that we use, in types: Eleventy ships none.
declare module "@11ty/eleventy" {
  export interface UserConfig {
    addGlobalData(name: string, value: unknown): void;
    addExtension(extensions: string[], options: { key: string; compile: () => Compiled }): void;
    setTemplateFormats(formats: string[]): void;
    setDataFileSuffixes(suffixes: string[]): void;
    setUseGitIgnore(use: boolean): void;
    setLayoutsDirectory(directory: string): void;
    readonly ignores: Set<string>;
    /** As the site says, or the command line. */
    readonly pathPrefix?: string;
    addPlugin<T>(plugin: (config: UserConfig, options: T) => void, options: T): void;
    addWatchTarget(target: string): void;
    on(
      event: "eleventy.before",
      hear: (about: { readonly runMode: "build" | "watch" | "serve" }) => unknown,
    ): void;
    on(
      event: "eleventy.after",
      hear: (about: { readonly directories: { readonly output: string } }) => unknown,
    ): void;
    addTemplate<T>(path: string, render: (data: T) => string, data: object): void;
    addShortcode(
      name: string,
      render: (this: { readonly page: ShownPage }, ...words: string[]) => string,
    ): void;
    amendLibrary(name: "md", amend: (markdown: MarkdownBlocks) => void): void;
  }

  /** As much of markdown-it as a rule for a line of its own needs. */
  interface MarkdownBlocks {
    readonly block: {
      readonly ruler: {
        before(
          other: string,
          name: string,
          rule: (state: BlockState, start: number, end: number, isSilent: boolean) => boolean,
        ): void;
      };
    };
  }

  /** Where what is written stands. */
  interface ShownPage {
    readonly url: string;
  }

  interface BlockState {
    line: number;
    readonly env: { readonly page: ShownPage };
    getLines(start: number, end: number, indent: number, keepsLast: boolean): string;
    push(type: "html_block", tag: "", nesting: 0): { content: string };
  }

  export type Compiled = (
    this: { defaultRenderer(data: unknown): Promise<unknown> },
    data: unknown,
  ) => Promise<string>;

  export interface Options {
    readonly configPath?: string;
    readonly quietMode: boolean;
    readonly config: (config: UserConfig) => void;
  }

  export default class Eleventy {
    constructor(input: string, output: string, options: Options);
    disableLogger(): void;
    write(): Promise<unknown>;
    toJSON(): Promise<
      readonly { readonly inputPath: string; readonly outputPath: string; readonly content: string }[]
    >;
  }
}
