export function translate(shelf?: string): Promise<string | undefined>;
export function bundle(
  folder: string,
  entries?: readonly string[],
): Promise<{ readonly outputFiles: readonly { readonly path: string; readonly contents: Uint8Array }[] }>;
