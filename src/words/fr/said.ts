// Floor 7. French: what others said of a study.
import type { In } from "../en/all.ts";
import type { said as english } from "../en/said.ts";

export const said: In<typeof english> = {
  "said.heading": "Ce qu’en disent d’autres",
  "said.about": "sur <about>{name}</about>",
  "said.more": "Suite sur {host}",
};
