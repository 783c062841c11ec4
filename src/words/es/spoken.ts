// Floor 7. Spanish: what a speaker says of a change, with numbers in words. All counts are counts of edges.
import type { In } from "../en/all.ts";
import type { spoken as english } from "../en/spoken.ts";

export const spoken: In<typeof english> = {
  "spoken.percent": "{near} ({percent})",
  "spoken.about": "cerca de {part}",
  "spoken.none": "nada",
  "spoken.almostNone": "casi nada",
  "spoken.twentieth": "una vigésima parte",
  "spoken.fifteenth": "una decimoquinta parte",
  "spoken.tenth": "una décima parte",
  "spoken.eighth": "una octava parte",
  "spoken.sixth": "una sexta parte",
  "spoken.fifth": "una quinta parte",
  "spoken.quarter": "una cuarta parte",
  "spoken.third": "un tercio",
  "spoken.twoFifths": "dos quintos",
  "spoken.half": "la mitad",
  "spoken.threeFifths": "tres quintos",
  "spoken.twoThirds": "dos tercios",
  "spoken.threeQuarters": "tres cuartos",
  "spoken.fourFifths": "cuatro quintos",
  "spoken.nineTenths": "nueve décimos",
  "spoken.almostAll": "casi todo",
  "spoken.all": "todo",
  "spoken.count":
    "{count, plural, =0 {ninguno} =1 {uno} =2 {dos} =3 {tres} =4 {cuatro} =5 {cinco} =6 {seis} =7 {siete} =8 {ocho} =9 {nueve} =10 {diez} one {#} other {#}}",
  "spoken.edges": "{count, plural, one {De {all} límite, {moves}.} other {De {all} límites, {moves}.}}",
  "spoken.better":
    "{count, plural, one {{edges} se vuelve más fácil de ver} other {{edges} se vuelven más fáciles de ver}}",
  "spoken.worse":
    "{count, plural, one {{edges} se vuelve más difícil de ver} other {{edges} se vuelven más difíciles de ver}}",
  "spoken.betterAndWorse": "{better} y {worse}",
  "spoken.noneMoves": "ninguno se vuelve más fácil o más difícil de ver",
  "spoken.price": "El precio: {losses}.",
  "spoken.moreLosses":
    "{count, plural, one {y {edges} más se vuelve más difícil de ver} other {y {edges} más se vuelven más difíciles de ver}}",
  "spoken.merged": "{one} y {other} se funden en un solo color",
  "spoken.parted": "{newOne} y {newOther} se separan, y el límite entre ambos es {grade} ({contrast})",
  "spoken.lost":
    "{how, select, still {donde se tocan {one} y {other}, el límite era {wasGrade} ({wasContrast}); ahora sigue siendo {grade} ({contrast})} only {donde se tocan {one} y {other}, el límite era {wasGrade} ({wasContrast}); ahora es solo {grade} ({contrast})} other {donde se tocan {one} y {other}, el límite era {wasGrade} ({wasContrast}); ahora es {grade} ({contrast})}}",
  "spoken.lostRenamed":
    "{how, select, still {donde se tocan {one} y {other}, el límite era {wasGrade} ({wasContrast}); ahora, entre {newOne} y {newOther}, sigue siendo {grade} ({contrast})} only {donde se tocan {one} y {other}, el límite era {wasGrade} ({wasContrast}); ahora, entre {newOne} y {newOther}, es solo {grade} ({contrast})} other {donde se tocan {one} y {other}, el límite era {wasGrade} ({wasContrast}); ahora, entre {newOne} y {newOther}, es {grade} ({contrast})}}",
};
