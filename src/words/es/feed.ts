// Floor 7. Spanish: what readers of feeds see, and the caption of a flag on somebody else’s page.
import type { In } from "../en/all.ts";
import type { feed as english } from "../en/feed.ts";

export const feed: In<typeof english> = {
  "feed.decisions": "{title}: decisiones",
  "feed.decision": "{status}: {title}",
  "feed.status": "{status}, {meaning}.",
  "feed.statusDecided": "{status}, {meaning}. {decision}",
  "feed.redesigns": "Los rediseños son estudios no oficiales.",
  "feed.proposed": "{change} {verdict}: nitidez {before} → {after}.",
  "feed.rights": "{credit}, {licence}",
  "feed.flagToday": "{flag} hoy",
  "feed.flagRedesign": "{flag}, rediseño",
  "feed.clearer": "<a>{name}</a>: más nítido. Estudio no oficial.",
  "feed.atAPrice": "<a>{name}</a>: más nítido, a un precio. Estudio no oficial.",
  "feed.mixed": "<a>{name}</a>: desigual. Estudio no oficial.",
  "feed.lessClear": "<a>{name}</a>: menos nítido. Estudio no oficial.",
  "feed.noGain": "<a>{name}</a>: sin ganancia. Estudio no oficial.",
};
