// Floor 7. German: what readers of feeds see, and the caption of a flag on somebody else’s page.
import type { In } from "../en/all.ts";
import type { feed as english } from "../en/feed.ts";

export const feed: In<typeof english> = {
  "feed.decisions": "{title}: Entscheidungen",
  "feed.decision": "{status}: {title}",
  "feed.status": "{status}, {meaning}.",
  "feed.statusDecided": "{status}, {meaning}. {decision}",
  "feed.redesigns": "Die Neuentwürfe sind inoffizielle Studien.",
  "feed.proposed": "{change} {verdict}: Klarheit {before} → {after}.",
  "feed.rights": "{credit}, {licence}",
  "feed.flagToday": "{flag} heute",
  "feed.flagRedesign": "{flag}, Neuentwurf",
  "feed.clearer": "<a>{name}</a>: klarer. Inoffizielle Studie.",
  "feed.atAPrice": "<a>{name}</a>: klarer, um einen Preis. Inoffizielle Studie.",
  "feed.mixed": "<a>{name}</a>: gemischt. Inoffizielle Studie.",
  "feed.lessClear": "<a>{name}</a>: weniger klar. Inoffizielle Studie.",
  "feed.noGain": "<a>{name}</a>: kein Gewinn. Inoffizielle Studie.",
};
