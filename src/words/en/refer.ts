// Floor 7. English: how to cite a study, and the stamp of its state.

export const refer = {
  "refer.heading": "Cite this",
  /** A button. */
  "refer.copyText": "Copy the text",
  /** A button. */
  "refer.copyBibtex": "Copy the BibTeX",
  /** Said after a button was pressed. */
  "refer.copied": "Copied.",
  "refer.notCopied": "The browser did not allow it.",
  "refer.bibtexAndStamp": "BibTeX, and what the stamp is for",
  "refer.stamp":
    "Stamp <stamp></stamp>: a short mark of the drawing, the change and the measure. Through <link>an address with the stamp in it</link>, a later reader is told where what is measured has changed since. The words of a study may change without it.",
  "refer.changed":
    "<strong>This study has changed since.</strong> The link you came by was made for an earlier state, with the stamp <came></came>. What is shown here now has the stamp <now></now>.",
  /** In a citation, behind the title. */
  "refer.study": "unofficial flag redesign study",
  "refer.edge": "one edge of an unofficial flag redesign study",
  "refer.series": "series of unofficial flag redesign studies",
  /** A citation behind its authors: a title in the quotation marks of the language, one of the three before, and where it stands. */
  "refer.cited": "“{title}”, {kind}. {gallery}. {address}",
  "refer.citedOn": "“{title}”, {kind}. {gallery}, {date}. {address}",
  /** A note in BibTeX, its first letter made a capital. */
  "refer.note": "{kind}, {gallery}",
  "refer.noteStamped": "{kind}, {gallery}, stamp {stamp}",
} as const;
