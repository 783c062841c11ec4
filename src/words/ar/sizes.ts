// Floor 7. Arabic: both flags at sizes that stand for distances.
import type { In } from "../en/all.ts";
import type { sizes as english } from "../en/sizes.ts";

export const sizes: In<typeof english> = {
  "sizes.title": "على بعد ذراع",
  "sizes.caption":
    "إذا نُظر إليها من 60 سم فكل منها بحجم العلم من المسافة المكتوبة تحتها، على شاشة أو ورق بكثافة 96 بكسل في البوصة.",
  "sizes.says": "العلمان صغيرين كما يبدوان من بعيد، على بعد ذراع: {distances}.",
  "sizes.distance": "{distance} ضعف ارتفاع العلم",
  "sizes.alt": "{label}، بحجمه من {distance}",
};
