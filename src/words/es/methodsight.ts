// Floor 7. Spanish: the steps of the method from a drawing to its lines. `em` is an emphasised term, `i` the title of a paper.
import type { In } from "../en/all.ts";
import type { methodSight as english } from "../en/methodsight.ts";

export const methodSight: In<typeof english> = {
  "method.edgesText":
    "Dibujamos la bandera con {pixels} píxeles de alto, menos si es muy ancha, y numeramos sus colores. Trazamos la línea donde se tocan dos de ellos. Todas las líneas entre los mismos dos colores son un <em>límite</em>; su longitud se da en alturas de la bandera: a lo ancho de una de 2:3 es de 1,5.",
  "method.edgesLimits":
    "El borde de la bandera no es un límite. Una forma que se ve a menos de la mitad de su fuerza (opacidad 0,4) queda fuera; cualquier otra cuenta como opaca. Un límite de menos de {edge} de la longitud de todos se cita, pero nunca es el más débil ni mueve ningún veredicto.",
  "method.edgesSource":
    "Comprobado con banderas cuya geometría fija una ley: las partes coinciden en 0,2 puntos, las longitudes en 1 %, con puntas finas en 3 %. Juicio nuestro: el tamaño de la imagen, la mitad de la fuerza, {edge} de toda la longitud.",
  "method.distanceText":
    "Una bandera se hace para verse de lejos. Esta galería mide a {distance} alturas de bandera; desde ahí, la parte más fina que distingue un ojo, un minuto de arco, es {finest} de una altura de bandera. Las partes más finas se asignan a sus vecinas antes de trazar los límites: un contorno delgado desaparece y uno ancho queda. Una parte a menos del 10 % de ese límite da un aviso.",
  "method.distanceNone":
    "Esta galería mide el dibujo entero. A una distancia, que puede elegir, las partes demasiado finas para distinguirse pasan a sus vecinas.",
  "method.distanceFocus":
    "<em>Lo que debe verse</em> son las figuras: partes que no tocan ningún borde, con todo lo que encierran, y que llenan el 0,2 % de la bandera o más. Por encima del 35 % son un campo enmarcado, y miramos dentro; el hueco de un anillo no lo es. Un trozo con la décima parte de esa superficie es una <em>figura</em> propia. Los autores pueden nombrarla, y deben hacerlo donde una figura se confunde con un campo de su mismo color, pues no adivinamos. Una bandera sin figura no es peor por ello.",
  "method.distanceSame":
    "Un color a menos de {same} de otro más extenso (<a>ΔE00</a>) cuenta con él. Las partes de los colores son del dibujo entero.",
  "method.distanceSource":
    "Un minuto de arco: agudeza de 20/20, ISO 8596, de segunda mano. Es un modelo: una sola línea fuerte aún puede notarse. Juicio nuestro: la distancia y todos los porcentajes, ΔE00 {same}, la décima parte.",
  "method.lastingText":
    "A cada distancia preguntamos dos cosas. ¿Es nítido lo que debe verse? Sus propios límites tienen allí una <a>nitidez</a>. ¿Es bastante grande? Debe quedar al menos {left} de su superficie, y su trozo mayor debe abarcar {span} minutos de arco, como una letra que lee una agudeza de 20/20.",
  "method.lastingLast":
    "<em>Aguanta hasta</em> la última distancia a la que es bastante grande. Es cuestión de tamaño, que ningún cambio de color mueve. Las imágenes están borrosas como las tiene el ojo; de ellas no se saca ninguna cifra.",
  "method.lastingTable": "Qué hace una distancia con una bandera, en tanto por ciento de su altura",
  "method.lastingFrom": "Alturas de bandera",
  "method.lastingFinest": "Parte más fina",
  "method.lastingBlur": "Borrosidad",
  "method.lastingSource":
    "{span} minutos de arco: ISO 8596, de segunda mano. Juicio nuestro: {left}, y pedirlo al trozo mayor. Borrosidad, 0,5 minutos de arco de desviación típica: Levi y otros, <i>Vision Research</i> 30, 1990, <levi>resumen</levi>; una gaussiana no es una lente: Strasburger y otros, <strasburger>2018</strasburger>.",
};
