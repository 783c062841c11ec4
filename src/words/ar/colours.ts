// Floor 7. Arabic: the colours of a study.
import type { In } from "../en/all.ts";
import type { colours as english } from "../en/colours.ts";

export const colours: In<typeof english> = {
  "colours.caption": "ألوان الأصل، الأوسع أولًا. الحصة من الرسم كله؛ والانعكاسية للقماش.",
  "colours.colour": "اللون",
  "colours.share": "الحصة",
  "colours.reflectance": "الانعكاسية",
  "colours.tincture": "الصبغة",
  "colours.becomes": "يتحول إلى",
  "colours.vanishes": "لا يُميَّز من {distance} ضعف ارتفاع العلم",
  "colours.uneven": "غير متجانس، من <first></first> إلى <last></last>",
  "colours.metal": "معدن",
  "colours.ofTincture": "لون",
};
