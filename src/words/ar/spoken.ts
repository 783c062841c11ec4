// Floor 7. Arabic: what a speaker says of a change, with numbers in words. All counts are counts of edges.
import type { In } from "../en/all.ts";
import type { spoken as english } from "../en/spoken.ts";

export const spoken: In<typeof english> = {
  "spoken.percent": "{near} ({percent})",
  "spoken.about": "{part} تقريبًا",
  "spoken.none": "لا شيء",
  "spoken.almostNone": "لا شيء تقريبًا",
  "spoken.twentieth": "جزء من عشرين",
  "spoken.fifteenth": "جزء من خمسة عشر",
  "spoken.tenth": "العُشر",
  "spoken.eighth": "الثُّمن",
  "spoken.sixth": "السُّدس",
  "spoken.fifth": "الخُمس",
  "spoken.quarter": "الربع",
  "spoken.third": "الثلث",
  "spoken.twoFifths": "خُمسان",
  "spoken.half": "النصف",
  "spoken.threeFifths": "ثلاثة أخماس",
  "spoken.twoThirds": "ثلثان",
  "spoken.threeQuarters": "ثلاثة أرباع",
  "spoken.fourFifths": "أربعة أخماس",
  "spoken.nineTenths": "تسعة أعشار",
  "spoken.almostAll": "الكل تقريبًا",
  "spoken.all": "الكل",
  "spoken.count":
    "{count, plural, =0 {لا واحدة} =1 {واحدة} =2 {اثنتان} =3 {ثلاث} =4 {أربع} =5 {خمس} =6 {ست} =7 {سبع} =8 {ثمانٍ} =9 {تسع} =10 {عشر} zero {#} one {#} two {#} few {#} many {#} other {#}}",
  "spoken.edges":
    "{count, plural, zero {عدد الحواف: {all}. {moves}.} one {الحواف: {all}. {moves}.} two {الحواف: {all}. {moves}.} few {الحواف: {all}. {moves}.} many {الحواف: {all}. {moves}.} other {الحواف: {all}. {moves}.}}",
  "spoken.better":
    "{count, plural, zero {{edges} أسهل رؤية} one {{edges} صارت أسهل رؤية} two {{edges} صارتا أسهل رؤية} few {{edges} صارت أسهل رؤية} many {{edges} صارت أسهل رؤية} other {{edges} صارت أسهل رؤية}}",
  "spoken.worse":
    "{count, plural, zero {{edges} أصعب رؤية} one {{edges} صارت أصعب رؤية} two {{edges} صارتا أصعب رؤية} few {{edges} صارت أصعب رؤية} many {{edges} صارت أصعب رؤية} other {{edges} صارت أصعب رؤية}}",
  "spoken.betterAndWorse": "{better} و{worse}",
  "spoken.noneMoves": "لا واحدة صارت أسهل أو أصعب رؤية",
  "spoken.price": "الثمن: {losses}.",
  "spoken.moreLosses":
    "{count, plural, zero {{edges} أخرى أصعب رؤية} one {و{edges} أخرى صارت أصعب رؤية} two {و{edges} أخريان صارتا أصعب رؤية} few {و{edges} أخرى صارت أصعب رؤية} many {و{edges} أخرى صارت أصعب رؤية} other {و{edges} أخرى صارت أصعب رؤية}}",
  "spoken.merged": "{one} و{other} يندمجان لونًا واحدًا",
  "spoken.parted": "{newOne} و{newOther} ينفصلان، والحافة بينهما {grade} ({contrast})",
  "spoken.lost":
    "{how, select, still {حيث يلتقي {one} و{other} كانت الحافة {wasGrade} ({wasContrast})؛ وما زالت الآن {grade} ({contrast})} only {حيث يلتقي {one} و{other} كانت الحافة {wasGrade} ({wasContrast})؛ وليست الآن إلا {grade} ({contrast})} other {حيث يلتقي {one} و{other} كانت الحافة {wasGrade} ({wasContrast})؛ وهي الآن {grade} ({contrast})}}",
  "spoken.lostRenamed":
    "{how, select, still {حيث يلتقي {one} و{other} كانت الحافة {wasGrade} ({wasContrast})؛ والآن، وقد صار {newOne} إلى جانب {newOther}، ما زالت {grade} ({contrast})} only {حيث يلتقي {one} و{other} كانت الحافة {wasGrade} ({wasContrast})؛ والآن، وقد صار {newOne} إلى جانب {newOther}، ليست إلا {grade} ({contrast})} other {حيث يلتقي {one} و{other} كانت الحافة {wasGrade} ({wasContrast})؛ والآن، وقد صار {newOne} إلى جانب {newOther}، هي {grade} ({contrast})}}",
};
