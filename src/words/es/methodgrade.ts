// Floor 7. Spanish: the steps of the method that decide a grade. `em` is an emphasised term, `i` the title of a paper.
import type { In } from "../en/all.ts";
import type { methodGrade as english } from "../en/methodgrade.ts";

export const methodGrade: In<typeof english> = {
  "method.reflectanceText":
    "Un número de pantalla dice cuánta luz da un color. Tomamos su luminancia, de 0 a 1, en luz lineal:",
  "method.reflectanceCloth":
    "La tela nunca es del todo negra ni del todo blanca, y según los números de pantalla dos colores oscuros parecen más fáciles de distinguir de lo que son. Por eso la luminancia se sitúa entre la tela más negra y la más blanca, en tanto por ciento:",
  "method.reflectanceRanges":
    "Los materiales de construcción van de {black} a {white}, más o menos; las pinturas de un fabricante, de {paintBlack} a {paintWhite}. Un grado que el intervalo más amplio cambiaría se marca <em>en el umbral</em>. Donde una ley fija la tela, una galería pone 0 y 100, y entonces {laws}.",
  "method.law": "{first} sobre {second} tiene un contraste de {contrast}, {grade}",
  "method.lawColour": "{colour} {reflectance}",
  "method.near": "En el umbral: tela de {black} a {white} (anillo) y de {paintBlack} a {paintWhite} (punto)",
  "method.reflectanceSource":
    "Luminancia: <wcag>WCAG 2.2</wcag>. sRGB: IEC 61966-2-1. Intervalos: páginas sobre materiales de construcción, la carta de un fabricante de pinturas; leyes: según las cuentan otros; todo de segunda mano. La recta de negro a blanco: sin fuente. Juicio nuestro: en el umbral.",
  "method.contrastText":
    "El contraste compara la luz que devuelven dos colores. Es del 0 % cuando ambos devuelven la misma, y mayor cuanto más se alejan:",
  "method.contrastTable": "Lo mínimo que necesitan las personas con baja visión",
  "method.contrastWeak": "menos del 30 %",
  "method.contrastSoft": "del 30 a menos del 45 %",
  "method.contrastClear": "del 45 a menos del 60 %",
  "method.contrastStrong": "60 % y más",
  "method.needsWeak": "por debajo de todo paso",
  "method.needsSoft": "grandes elementos de construcción",
  "method.needsClear": "objetos pequeños y sueltos: las figuras",
  "method.needsStrong": "objetos pequeños en dos colores",
  "method.contrastClose":
    "Una figura es un objeto pequeño y suelto; por eso un límite es nítido desde el 45 %. El ejemplo publicado con la fórmula, {reflectances}, tiene {published}; aquí {computed}.",
  "method.pairs": "Cómo resultan las parejas habituales; marcas en 30, 45 y 60 %",
  "method.pair": "Pareja",
  "method.pairContrast": "Contraste",
  "method.pairScale": "En una escala de 0 a 100 por ciento",
  "method.pairRatio": "Razón",
  "method.contrastSource":
    "Bowman y Sapolinski: AS 1428.1:2009, apéndice B; AS/NZS 1428.4.1, apéndice E; de segunda mano. El porcentaje no se compara con ninguna otra escala: Boon y otros, <i>Work</i> 70(4), <boon>2021</boon>. Juicio nuestro: que una figura es un objeto pequeño y suelto; los matices de las parejas. Qué parejas se leen con nitidez: práctica común, sin fuente.",
  "method.besideText":
    "Otras tres medidas acompañan al contraste, y ninguna decide. La <em>razón de contraste</em> de la web está hecha para pantallas: {first} sobre {second} supera su 3 a 1, y aun así nadie que mire banderas la llama fácil de ver. <em>ΔE00</em> dice cuán distintos se ven dos colores, tono incluido. La tercera es la <a>regla de los esmaltes</a>.",
  "method.besidePair":
    "{first} / {second}: razón de contraste <number>{ratio}</number>, ΔE00 <number>{deltaE00}</number>, contraste <number>{contrast}</number>, {grade}",
  "method.besideSource":
    "WCAG 2.2, <ratio>razón</ratio> y <objects>1.4.11</objects>. Sharma, Wu, Dalal, <sharma>CIEDE2000</sharma>, 2005; sus 34 pares de prueba prueban este programa. Que el rojo sobre negro cuesta de ver: práctica común, sin fuente.",
};
