// Floor 7. Spanish: what others said of a study.
import type { In } from "../en/all.ts";
import type { said as english } from "../en/said.ts";

export const said: In<typeof english> = {
  "said.heading": "Qué dicen otros",
  "said.about": "sobre <about>{name}</about>",
  "said.more": "Más en {host}",
};
