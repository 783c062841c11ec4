// Floor 7. Spanish: the page of one edge.
import type { In } from "../en/all.ts";
import type { edgepage as english } from "../en/edgepage.ts";

export const edgepage: In<typeof english> = {
  "edgepage.place": "En la bandera; el recuadro se muestra ampliado",
  "edgepage.numbers": "El límite en cifras",
  "edgepage.elsewhere": "Los mismos dos colores en otros estudios",
  "edgepage.study": "Estudio",
  "edgepage.elsewhereNote":
    "Dos colores de igual nombre no tienen por qué ser el mismo: compare la tela, no la palabra.",
  "edgepage.siblings": "Límites de este estudio",
  "edgepage.nearLine": "{near}: sobre otra tela sería otro. <why>Por qué</why>",
  "edgepage.how": "Cómo se obtiene el <contrast>contraste</contrast> y <beside>qué lo acompaña</beside>.",
  "edgepage.locator": "Dónde está el límite",
  "edgepage.locatorSays":
    "La bandera original en pálido, con las líneas trazadas donde se tocan {one} y {other}.",
  "edgepage.contrast": "contraste",
  "edgepage.difference": "diferencia de color",
  "edgepage.sides": "Primero el original, luego el rediseño.",
  "edgepage.seenNote":
    "El gris conserva el contraste. La diferencia de color es ΔE00: cuanto mayor, más fácil de distinguir. Son aproximaciones de la forma más fuerte de cada deficiencia, y no una prueba de la vista de nadie. <how>Cómo se hacen</how>",
  "edgepage.noEdge": "sin límite",
  "edgepage.all": "Todos en una sola regla",
  "edgepage.of": "Un límite de <study>{title}</study>",
  "edgepage.becomes": "{was} pasa a {is}",
  "edgepage.description": "Un límite de un estudio no oficial de rediseño, {outcome}.",
  "edgepage.title": "{edge}, en {study}",
  "edgepage.placeAlt": "{label}, el lugar donde se tocan {one} y {other}",
  "edgepage.unofficial": "Rediseño, estudio no oficial",
  "edgepage.bothNear": "Ambos grados están en el umbral",
  "edgepage.originalNear": "El grado del original está en el umbral",
  "edgepage.redesignNear": "El grado del rediseño está en el umbral",
};
