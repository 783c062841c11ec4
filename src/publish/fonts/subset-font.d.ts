// Floor 9. The part of subset-font 2 that we use, in types: it ships none.
declare module "subset-font" {
  export interface Options {
    readonly targetFormat: "woff2";
    /** OpenType features by their tags; all others go. */
    readonly keepFeatures: readonly string[];
  }

  export default function subsetFont(font: Buffer, text: string, options: Options): Promise<Buffer>;
}
