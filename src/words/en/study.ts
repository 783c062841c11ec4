// Floor 7. English: the page of a study.

export const study = {
  /** Heading. */
  "study.afar": "From afar",
  /** Begins “… stands in the argument.” */
  "study.theStrip": "The distance strip",
  /** As the one before. */
  "study.theSizes": "The row of sizes",
  "study.contents": "On this page",
  /** Heading. */
  "study.seen": "To colour-blind readers, and in grey",
  "study.likeness": "Could it be mistaken?",
  /** A link to a letter or a form. */
  "study.argue": "Argue with this",
  /** `name` is a figure: study.theStrip and its like. */
  "study.shown": "{name} stands in <argument>the argument</argument>.",
  "study.numbers": "The comparison in numbers",
  "study.theSeen": "What they see",
  /** Behind “Redesign,” under the flag. */
  "study.unofficial": "unofficial study",
  /** A link. */
  "study.allChanges": "All changes of one colour",
  /** A link. */
  "study.verdictHow": "How the verdict is reached",
  /** A link. */
  "study.show": "Step by step, for a projector",
  /** A link. */
  "study.sheets": "Sheets for a class",
  /** A link. */
  "study.argueByMail": "Argue with this by mail",
  /** Heading. */
  "study.argument": "The argument",
  /** Heading. */
  "study.decision": "Decision",
  /** Heading: what the change does to the symbols of the flag. */
  "study.meaning": "Meaning",
  /** Begins the description of a page. */
  "study.unofficialLead": "Unofficial redesign study.",
} as const;
