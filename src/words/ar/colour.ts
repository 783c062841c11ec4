// Floor 7. Arabic: names of colours, and a flag told by them.
import type { In } from "../en/all.ts";
import type { colour as english } from "../en/colour.ts";

export const colour: In<typeof english> = {
  "colour.black": "أسود",
  "colour.white": "أبيض",
  "colour.grey": "رمادي",
  "colour.red": "أحمر",
  "colour.orange": "برتقالي",
  "colour.yellow": "أصفر",
  "colour.green": "أخضر",
  "colour.blue": "أزرق",
  "colour.purple": "أرجواني",
  "colour.pink": "وردي",
  "colour.brown": "بني",
  "colour.dark":
    "{word, select, other {{degree, select, very {{colour} داكن جدًا} less {{colour} أقل دكنة} slightlyLess {{colour} أقل دكنة قليلًا} muchLess {{colour} أقل دكنة بكثير} other {{colour} داكن}}}}",
  "colour.light":
    "{word, select, other {{degree, select, very {{colour} فاتح جدًا} less {{colour} أقل إضاءة} slightlyLess {{colour} أقل إضاءة قليلًا} muchLess {{colour} أقل إضاءة بكثير} other {{colour} فاتح}}}}",
  "colour.darkest": "أدكن {colour}",
  "colour.lightest": "أفتح {colour}",
  "colour.darker":
    "{degree, select, slightly {{colour} أدكن قليلًا} much {{colour} أدكن بكثير} other {{colour} أدكن}}",
  "colour.lighter":
    "{degree, select, slightly {{colour} أفتح قليلًا} much {{colour} أفتح بكثير} other {{colour} أفتح}}",
  "colour.deeper":
    "{degree, select, slightly {{colour} أعمق قليلًا} much {{colour} أعمق بكثير} other {{colour} أعمق}}",
  "colour.greyer":
    "{degree, select, slightly {{colour} أميل قليلًا إلى الرمادي} much {{colour} أميل كثيرًا إلى الرمادي} other {{colour} أميل إلى الرمادي}}",
  "colour.warmer":
    "{degree, select, slightly {{colour} أدفأ قليلًا} much {{colour} أدفأ بكثير} other {{colour} أدفأ}}",
  "colour.bluer":
    "{degree, select, slightly {{colour} أميل قليلًا إلى الأزرق} much {{colour} أميل كثيرًا إلى الأزرق} other {{colour} أميل إلى الأزرق}}",
  "colour.yellower":
    "{degree, select, slightly {{colour} أميل قليلًا إلى الأصفر} much {{colour} أميل كثيرًا إلى الأصفر} other {{colour} أميل إلى الأصفر}}",
  "colour.redder":
    "{degree, select, slightly {{colour} أميل قليلًا إلى الأحمر} much {{colour} أميل كثيرًا إلى الأحمر} other {{colour} أميل إلى الأحمر}}",
  "colour.greener":
    "{degree, select, slightly {{colour} أميل قليلًا إلى الأخضر} much {{colour} أميل كثيرًا إلى الأخضر} other {{colour} أميل إلى الأخضر}}",
  "colour.purpler":
    "{degree, select, slightly {{colour} أميل قليلًا إلى الأرجواني} much {{colour} أميل كثيرًا إلى الأرجواني} other {{colour} أميل إلى الأرجواني}}",
  "colour.reddish":
    "{degree, select, slightly {{colour} فيه حمرة خفيفة} much {{colour} فيه حمرة ظاهرة} very {{colour} فيه حمرة شديدة} other {{colour} مائل إلى الحمرة}}",
  "colour.brownish":
    "{degree, select, slightly {{colour} فيه سمرة خفيفة} much {{colour} فيه سمرة ظاهرة} very {{colour} فيه سمرة شديدة} other {{colour} مائل إلى البني}}",
  "colour.yellowish":
    "{degree, select, slightly {{colour} فيه صفرة خفيفة} much {{colour} فيه صفرة ظاهرة} very {{colour} فيه صفرة شديدة} other {{colour} مائل إلى الصفرة}}",
  "colour.greenish":
    "{degree, select, slightly {{colour} فيه خضرة خفيفة} much {{colour} فيه خضرة ظاهرة} very {{colour} فيه خضرة شديدة} other {{colour} مائل إلى الخضرة}}",
  "colour.bluish":
    "{degree, select, slightly {{colour} فيه زرقة خفيفة} much {{colour} فيه زرقة ظاهرة} very {{colour} فيه زرقة شديدة} other {{colour} مائل إلى الزرقة}}",
  "colour.purplish":
    "{degree, select, slightly {{colour} فيه أرجوانية خفيفة} much {{colour} فيه أرجوانية ظاهرة} very {{colour} فيه أرجوانية شديدة} other {{colour} مائل إلى الأرجواني}}",
  "colour.greyish":
    "{degree, select, slightly {{colour} فيه رمادية خفيفة} much {{colour} فيه رمادية ظاهرة} very {{colour} فيه رمادية شديدة} other {{colour} مائل إلى الرمادي}}",
  "colour.warm":
    "{degree, select, slightly {{colour} دافئ قليلًا} much {{colour} دافئ بوضوح} very {{colour} دافئ جدًا} other {{colour} دافئ}}",
  "colour.neutral":
    "{degree, select, slightly {{colour} يكاد يكون محايدًا} much {{colour} محايد تمامًا} very {{colour} محايد تمامًا} other {{colour} محايد}}",
  "colour.deep": "{word, select, other {{colour} عميق}}",
  "colour.mid": "{colour} متوسط",
  "colour.off": "{word, select, white {أبيض مكسور} black {أسود مكسور} other {{colour} مكسور}}",
  "colour.charcoal": "{colour} فحمي",
  "colour.dull": "{colour} كامد",
  "colour.jet": "{colour} حالك",
  "colour.bright": "{colour} ناصع",
  "colour.pure": "{colour} خالص",
  "colour.nth":
    "{place, select, second {{colour} ثانٍ} third {{colour} ثالث} fourth {{colour} رابع} fifth {{colour} خامس} sixth {{colour} سادس} seventh {{colour} سابع} eighth {{colour} ثامن} ninth {{colour} تاسع} other {{colour} عاشر}}",
  "colour.numbered": "{colour} {number}",
  "colour.others": "ألوان أخرى",
  "colour.selectedPart": "{colour}، الجزء المختار",
  "colour.selected": "الجزء المختار بلون {colour}",
  "colour.empty": "رسم فارغ",
  "colour.allOver": "كله {colour}",
  "colour.mostly": "أكثره {colour}، مع {others}",
};
