// Floor 7. German: what others said of a study.
import type { In } from "../en/all.ts";
import type { said as english } from "../en/said.ts";

export const said: In<typeof english> = {
  "said.heading": "Was andere sagen",
  "said.about": "zu <about>{name}</about>",
  "said.more": "Mehr bei {host}",
};
