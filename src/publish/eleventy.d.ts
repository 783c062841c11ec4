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
