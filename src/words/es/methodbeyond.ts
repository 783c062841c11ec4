// Floor 7. Spanish: the steps of the method beyond one comparison. `em` is an emphasised term, `i` the title of a paper.
import type { In } from "../en/all.ts";
import type { methodBeyond as english } from "../en/methodbeyond.ts";

export const methodBeyond: In<typeof english> = {
  "method.optionsText":
    "Cada color de más del 0,4 % de la bandera se sustituye, de uno en uno: por cada color de la paleta de la galería, por cada otro color de la bandera, y por su <em>tono conservado</em>, el mismo tono tan aclarado u oscurecido que aporta {keptHue} de contraste con los vecinos de los que no se separa con nitidez. Ningún grado puede bajar por ello, y el color conserva su familia: el rosa no es rojo. Por debajo de ΔE*ab {departure} nada es un cambio, pues las banderas oficiales de una misma nación difieren otro tanto.",
  "method.optionsOrder":
    "El más nítido va primero; luego el más fuerte, la misma familia, la menor diferencia. Lo que funde un tercio del contorno de una figura no tiene puesto. Los <em>colores que cambiar primero</em> son como mucho los {mostFirst} cuyo mejor sustituto queda a menos de {firstWithin} puntos del mejor de todos, si este gana {leastGain}; sin tal ganancia, una bandera de {wholeClear} es nítida como está. Cuál se ve mejor lo dice el autor.",
  "method.optionsSource":
    "ΔE*ab {departure}: Melgosa y Gómez-Robledo, <i>Óptica Pura y Aplicada</i> 55(2), 2022, que lo proponen; leído el resumen. Claridad del tono conservado: <ottosson>Ottosson, 2020</ottosson>. Juicio nuestro: todas las demás cifras, y el orden.",
  "method.surveyText":
    "El <a>censo</a> mide cada bandera como es hoy, una vez cada una, por muchos estudios que tenga. La menos nítida va primero; la de un solo color, al final. Un mal puesto no dice que una bandera deba cambiar, ni uno bueno que sea buena.",
  "method.surveySource": "Juicio nuestro: el orden.",
  "method.likenessText":
    "Una bandera más nítida puede ser la de un vecino. Por eso cada rediseño se superpone a cada otra bandera y rediseño que aquí se conocen, salvo su propio original y las demás propuestas para él. Ambos se dividen en {columns} por {rows} celdas de color medio, como tela, y la cifra es el ΔE00 medio de las celdas: 0 es la misma imagen, y una celda que falta a uno cuenta 100. La otra se prueba también en espejo y cabeza abajo. Por debajo de {threshold}, el estudio lo dice.",
  "method.likenessCare":
    "Los campos grandes cuentan mucho y las figuras pequeñas poco: una cifra pequeña es una razón para mirar, y no prueba cómo se llegó a ella. Los dibujos que solo se guardan para esto se nombran y no se muestran: su licencia no es nuestra.",
  "method.likenessSource":
    "Juicio nuestro: la cuadrícula, la media y {threshold}. De los 36 585 pares de una colección abierta, 144 están más cerca, 50 de ellos una misma bandera con dos nombres; la mitad pasa de 36.",
  "method.visionText":
    "Muchas personas tienen ojos sin una de las tres clases de conos. Recoloreamos ambos dibujos como los ven esos ojos, y en gris, y los medimos otra vez. El gris conserva cada contraste; ahí decimos, pues, cuánto distan los dos grises más cercanos.",
  "method.visionSource":
    "Protán, deután: Machado, Oliveira, Fernandes, <machado>2009</machado>, severidad 1, en luz lineal, lo que el artículo no dice claramente. Tritán, que ese modelo no alcanza: Brettel, Viénot, Mollon, 1997. Matrices leídas en implementaciones publicadas.",
  "method.cautionProposal":
    "Cada rediseño es una propuesta y no una bandera en uso, salvo que su decisión lo diga.",
  "method.cautionLaw":
    "Las leyes sobre banderas difieren. Siga las de su lugar antes de fabricar, modificar o izar nada de lo que se muestra aquí, y respete la licencia de cada dibujo.",
  "method.cautionEyes":
    "Las imágenes para otros ojos son aproximaciones, y no una prueba de la vista de nadie.",
  "method.cautionWorth": "El contraste no dice si una bandera es buena, qué significa ni de quién es.",
  "method.cautionDistance":
    "La distancia es un modelo: la bruma, el deslumbramiento y el viento acortan toda distancia.",
  "method.cautionCloth":
    "Las cifras son del dibujo a la luz del día. Los tintes difieren, y la tela se destiñe, se moja y se pliega.",
};
