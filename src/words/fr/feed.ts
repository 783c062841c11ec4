// Floor 7. French: what readers of feeds see, and the caption of a flag on somebody else’s page.
import type { In } from "../en/all.ts";
import type { feed as english } from "../en/feed.ts";

export const feed: In<typeof english> = {
  "feed.decisions": "{title} : décisions",
  "feed.decision": "{status} : {title}",
  "feed.status": "{status}, {meaning}.",
  "feed.statusDecided": "{status}, {meaning}. {decision}",
  "feed.redesigns": "Les nouveaux dessins sont des études non officielles.",
  "feed.proposed": "{change} {verdict} : netteté {before} → {after}.",
  "feed.rights": "{credit}, {licence}",
  "feed.flagToday": "{flag} aujourd’hui",
  "feed.flagRedesign": "{flag}, nouveau dessin",
  "feed.clearer": "<a>{name}</a> : plus net. Étude non officielle.",
  "feed.atAPrice": "<a>{name}</a> : plus net, mais à un prix. Étude non officielle.",
  "feed.mixed": "<a>{name}</a> : partagé. Étude non officielle.",
  "feed.lessClear": "<a>{name}</a> : moins net. Étude non officielle.",
  "feed.noGain": "<a>{name}</a> : sans gain. Étude non officielle.",
};
