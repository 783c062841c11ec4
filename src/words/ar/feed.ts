// Floor 7. Arabic: what readers of feeds see, and the caption of a flag on somebody else’s page.
import type { In } from "../en/all.ts";
import type { feed as english } from "../en/feed.ts";

export const feed: In<typeof english> = {
  "feed.decisions": "{title}: القرارات",
  "feed.decision": "{status}: {title}",
  "feed.status": "{status}، {meaning}.",
  "feed.statusDecided": "{status}، {meaning}. {decision}",
  "feed.redesigns": "التصاميم الجديدة دراسات غير رسمية.",
  "feed.proposed": "{change} {verdict}: الوضوح من {before} إلى {after}.",
  "feed.rights": "{credit}، {licence}",
  "feed.flagToday": "{flag} اليوم",
  "feed.flagRedesign": "{flag}، التصميم الجديد",
  "feed.clearer": "<a>{name}</a>: أوضح. دراسة غير رسمية.",
  "feed.atAPrice": "<a>{name}</a>: أوضح، بثمن. دراسة غير رسمية.",
  "feed.mixed": "<a>{name}</a>: متفاوت. دراسة غير رسمية.",
  "feed.lessClear": "<a>{name}</a>: أقل وضوحًا. دراسة غير رسمية.",
  "feed.noGain": "<a>{name}</a>: بلا كسب. دراسة غير رسمية.",
};
