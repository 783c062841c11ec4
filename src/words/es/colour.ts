// Floor 7. Spanish: names of colours, and a flag told by them.
import type { In } from "../en/all.ts";
import type { colour as english } from "../en/colour.ts";

export const colour: In<typeof english> = {
  "colour.black": "negro",
  "colour.white": "blanco",
  "colour.grey": "gris",
  "colour.red": "rojo",
  "colour.orange": "naranja",
  "colour.yellow": "amarillo",
  "colour.green": "verde",
  "colour.blue": "azul",
  "colour.purple": "morado",
  "colour.pink": "rosa",
  "colour.brown": "marrón",
  "colour.dark":
    "{word, select, other {{degree, select, very {{colour} muy oscuro} less {{colour} menos oscuro} slightlyLess {{colour} algo menos oscuro} muchLess {{colour} mucho menos oscuro} other {{colour} oscuro}}}}",
  "colour.light":
    "{word, select, other {{degree, select, very {{colour} muy claro} less {{colour} menos claro} slightlyLess {{colour} algo menos claro} muchLess {{colour} mucho menos claro} other {{colour} claro}}}}",
  "colour.darkest": "{colour} más oscuro de todos",
  "colour.lightest": "{colour} más claro de todos",
  "colour.darker":
    "{degree, select, slightly {{colour} algo más oscuro} much {{colour} mucho más oscuro} other {{colour} más oscuro}}",
  "colour.lighter":
    "{degree, select, slightly {{colour} algo más claro} much {{colour} mucho más claro} other {{colour} más claro}}",
  "colour.deeper":
    "{degree, select, slightly {{colour} algo más intenso} much {{colour} mucho más intenso} other {{colour} más intenso}}",
  "colour.greyer":
    "{degree, select, slightly {{colour} algo más gris} much {{colour} mucho más gris} other {{colour} más gris}}",
  "colour.warmer":
    "{degree, select, slightly {{colour} algo más cálido} much {{colour} mucho más cálido} other {{colour} más cálido}}",
  "colour.bluer":
    "{degree, select, slightly {{colour} algo más azul} much {{colour} mucho más azul} other {{colour} más azul}}",
  "colour.yellower":
    "{degree, select, slightly {{colour} algo más amarillo} much {{colour} mucho más amarillo} other {{colour} más amarillo}}",
  "colour.redder":
    "{degree, select, slightly {{colour} algo más rojo} much {{colour} mucho más rojo} other {{colour} más rojo}}",
  "colour.greener":
    "{degree, select, slightly {{colour} algo más verde} much {{colour} mucho más verde} other {{colour} más verde}}",
  "colour.purpler":
    "{degree, select, slightly {{colour} algo más morado} much {{colour} mucho más morado} other {{colour} más morado}}",
  "colour.reddish":
    "{degree, select, slightly {{colour} algo rojizo} much {{colour} bastante rojizo} very {{colour} muy rojizo} other {{colour} rojizo}}",
  "colour.brownish":
    "{degree, select, slightly {{colour} algo pardusco} much {{colour} bastante pardusco} very {{colour} muy pardusco} other {{colour} pardusco}}",
  "colour.yellowish":
    "{degree, select, slightly {{colour} algo amarillento} much {{colour} bastante amarillento} very {{colour} muy amarillento} other {{colour} amarillento}}",
  "colour.greenish":
    "{degree, select, slightly {{colour} algo verdoso} much {{colour} bastante verdoso} very {{colour} muy verdoso} other {{colour} verdoso}}",
  "colour.bluish":
    "{degree, select, slightly {{colour} algo azulado} much {{colour} bastante azulado} very {{colour} muy azulado} other {{colour} azulado}}",
  "colour.purplish":
    "{degree, select, slightly {{colour} algo violáceo} much {{colour} bastante violáceo} very {{colour} muy violáceo} other {{colour} violáceo}}",
  "colour.greyish":
    "{degree, select, slightly {{colour} algo grisáceo} much {{colour} bastante grisáceo} very {{colour} muy grisáceo} other {{colour} grisáceo}}",
  "colour.warm":
    "{degree, select, slightly {{colour} algo cálido} much {{colour} bastante cálido} very {{colour} muy cálido} other {{colour} cálido}}",
  "colour.neutral":
    "{degree, select, slightly {{colour} casi neutro} much {{colour} del todo neutro} very {{colour} del todo neutro} other {{colour} neutro}}",
  "colour.deep": "{word, select, other {{colour} intenso}}",
  "colour.mid": "{colour} medio",
  "colour.off": "{word, select, white {blanco roto} other {casi {colour}}}",
  "colour.charcoal": "{colour} carbón",
  "colour.dull": "{colour} apagado",
  "colour.jet": "{colour} azabache",
  "colour.bright": "{colour} vivo",
  "colour.pure": "{colour} puro",
  "colour.nth":
    "{place, select, second {segundo {colour}} third {tercer {colour}} fourth {cuarto {colour}} fifth {quinto {colour}} sixth {sexto {colour}} seventh {séptimo {colour}} eighth {octavo {colour}} ninth {noveno {colour}} other {décimo {colour}}}",
  "colour.numbered": "{colour} {number}",
  "colour.others": "otros colores",
  "colour.selectedPart": "{colour}, parte elegida",
  "colour.selected": "el {colour} elegido",
  "colour.empty": "un dibujo vacío",
  "colour.allOver": "{colour} por entero",
  "colour.mostly": "sobre todo {colour}, con {others}",
};
