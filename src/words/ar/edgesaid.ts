// Floor 7. Arabic: what became of one edge.
import type { In } from "../en/all.ts";
import type { edgeSaid as english } from "../en/edgesaid.ts";

export const edgeSaid: In<typeof english> = {
  "edgeSaid.unchanged": "بلا تغيير",
  "edgeSaid.leftAlone": "التغيير يترك هذه الحافة كما هي: التباين {contrast}، {grade}.",
  "edgeSaid.hardlyChange": "{pair}: لا يكاد شيء يتغير على {where}: {move}.",
  "edgeSaid.stayClear": "{pair}: يبقى التمييز واضحًا على {where}: {move}.",
  "edgeSaid.stayHard": "{pair}: يبقى التمييز صعبًا على {where}: {move}.",
  "edgeSaid.gained":
    "{who, select, one {{is} يبرز الآن عن {neighbour} على {where}: التباين {contrast}، {grade}؛ وكان مع {was} يبلغ {wasContrast}، {wasGrade}.} same {{is} يتمايزان الآن على {where}: التباين {contrast}، {grade}، وكان {wasContrast}، {wasGrade}.} other {{is} يتمايزان الآن على {where}: التباين {contrast}، {grade}؛ وكان مع {was} يبلغ {wasContrast}، {wasGrade}.}}",
  "edgeSaid.better":
    "{who, select, one {{is} يبرز عن {neighbour} أكثر مما كان {was}، على {where}: {move}.} same {{is} يتمايزان أكثر من قبل، على {where}: {move}.} other {{is} يتمايزان أكثر مما كان {was}، على {where}: {move}.}}",
  "edgeSaid.betterUnclear":
    "{who, select, one {{is} أسهل تمييزًا عن {neighbour} مما كان {was}، على {where}، لكن بلا وضوح: {move}.} same {{is} أسهل تمييزًا من قبل، على {where}، لكن بلا وضوح: {move}.} other {{is} أسهل تمييزًا مما كان {was}، على {where}، لكن بلا وضوح: {move}.}}",
  "edgeSaid.lost":
    "{who, select, one {{is} لم يعد يبرز عن {neighbour} على {where}: التباين {contrast}، {grade}؛ وكان مع {was} يبلغ {wasContrast}، {wasGrade}.} same {{is} لم يعودا يتمايزان على {where}: التباين {contrast}، {grade}، وكان {wasContrast}، {wasGrade}.} other {{is} لم يعودا يتمايزان على {where}: التباين {contrast}، {grade}؛ وكان مع {was} يبلغ {wasContrast}، {wasGrade}.}}",
  "edgeSaid.worse":
    "{who, select, one {{is} يبرز عن {neighbour} أقل مما كان {was}، على {where}: {move}.} same {{is} يتمايزان أقل من قبل، على {where}: {move}.} other {{is} يتمايزان أقل مما كان {was}، على {where}: {move}.}}",
  "edgeSaid.worseUnclear":
    "{who, select, one {{is} أصعب تمييزًا عن {neighbour} مما كان {was}، على {where}: {move}.} same {{is} أصعب تمييزًا من قبل، على {where}: {move}.} other {{is} أصعب تمييزًا مما كان {was}، على {where}: {move}.}}",
  "edgeSaid.merged":
    "{pair} يصيران لونًا واحدًا في العين على {where}: الخط بينهما، وكان تباينه {wasContrast}، {wasGrade}، قد زال.",
  "edgeSaid.parted":
    "{pair} كانا لونًا واحدًا، وتفصل بينهما الآن حافة {gradeId, select, weak {ضعيفة} soft {لينة} clear {واضحة} other {قوية}}، على {where}: التباين {contrast}.",
  "edgeSaid.pair": "{one} و{other}",
  "edgeSaid.moveNone": "التباين {contrast}، {grade}",
  "edgeSaid.moveStill": "التباين من {wasContrast} إلى {contrast}، ما زالت {grade}",
  "edgeSaid.moveGrade": "التباين من {wasContrast} إلى {contrast}، من {wasGrade} إلى {grade}",
  "edgeSaid.whereAll": "كل خطوط العلم",
  "edgeSaid.wherePart": "{part} من طول الحواف كلها",
  "edgeSaid.whereOutline": "كامل محيط ما ينبغي أن يُرى",
  "edgeSaid.whereOutlinePart": "{part} من محيط ما ينبغي أن يُرى",
  "edgeSaid.whereAllAndOutline": "كل خطوط العلم، ومنها {outline}",
  "edgeSaid.whereOutlineAndMore": "{outline} وما زاد عليه، {part} من طول الحواف كلها",
};
