// Floor 7. Arabic: what others said of a study.
import type { In } from "../en/all.ts";
import type { said as english } from "../en/said.ts";

export const said: In<typeof english> = {
  "said.heading": "ما يقوله آخرون",
  "said.about": "عن <about>{name}</about>",
  "said.more": "المزيد عند {host}",
};
