// Floor 7. Arabic: the page of a series, and where a study stands in one.
import type { In } from "../en/all.ts";
import type { seriesPage as english } from "../en/seriespage.ts";

export const seriesPage: In<typeof english> = {
  "seriesPage.count": "سلسلة من {entries}",
  "seriesPage.description": "سلسلة من {entries}.",
  "seriesPage.show": "خطوة بخطوة",
  "seriesPage.sheet": "لصف دراسي",
  "seriesPage.vote": "التصويت",
  "seriesPage.step": "الرقم {number}: {title}",
  "seriesPage.today": "كما هي اليوم",
  "seriesPage.gain": "الوضوح، دراسة بعد دراسة",
  "seriesPage.cite": "الاستشهاد بهذه الصفحة",
  "seriesPage.unofficial": "التصاميم الجديدة دراسات غير رسمية.",
  "seriesPage.bare": "بلا دراسة",
  "seriesPage.ask": "ماذا تغيّر هنا؟",
  "seriesPage.series": "السلاسل",
  "seriesPage.firstShown": "{entries}، المعروض منها أولها حتى {number}",
  "seriesPage.places": "في السلاسل",
  "seriesPage.place": "{number} من {count} في <a>{title}</a>",
  "seriesPage.before": "قبلها: <a>{title}</a>",
  "seriesPage.next": "التالية: <a>{title}</a>",
};
