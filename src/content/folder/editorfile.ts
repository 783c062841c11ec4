// Floor 5. Files that editors put beside the one that is being written, and take away again. They are nobody's mistake.

/** Swap files, backups, locks and fresh copies, each as its editor names them (common practice, no source). */
const patterns: readonly RegExp[] = [
  /~$/,
  /^\..*\.(?:sw[a-z]|kate-swp)$/,
  /^4913$/,
  /^\.?#/,
  /^\.goutputstream-/,
  /___jb_(?:tmp|old)___$/,
  /\.(?:tmp|temp|bak|part|crdownload)$/,
  /\.tmp[.-][\w.-]+$/,
];

/** Returns whether a file of this name is an editor's own: `study.md~`, `.study.md.swp`, `4913`, `.#study.md`. */
export function isEditorFile(name: string): boolean {
  return patterns.some((pattern) => pattern.test(name));
}
