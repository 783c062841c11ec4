// Floor 7. Spanish: what stands around the rules for studies and drawings, which are English in every language.
import type { In } from "../en/all.ts";
import type { rules as english } from "../en/rules.ts";

export const rules: In<typeof english> = {
  "rules.title": "Reglas de estudios y dibujos",
  "rules.description":
    "Qué significa cada mensaje sobre un estudio o un dibujo, con un ejemplo erróneo y uno correcto.",
  "rules.lede":
    "Cada mensaje sobre un estudio acaba con el nombre de su regla. Aquí {count, plural, one {está la # regla} other {están las # reglas}}: qué significa cada una, por qué existe, y un ejemplo erróneo junto a uno correcto. Están en inglés, como los mensajes.",
  "rules.note":
    "Cada una es un error, que deja el estudio fuera de la galería hasta que se corrija, salvo que se marque como aviso, con el que se queda. Los ejemplos en recuadro son lo que se escribe, y están probados: el erróneo incumple su regla y ninguna otra; el correcto, ninguna.",
  "rules.find": "Buscar reglas con estas palabras",
  "rules.count": "{count, plural, one {# regla} other {# reglas}}",
  "rules.found": "{found} de {count, plural, one {# regla} other {# reglas}}",
  "rules.warning": "Aviso",
  "rules.link": "Enlace a esta regla",
  "rules.wrong": "Erróneo",
  "rules.wrongIn": "Erróneo, en {file}",
  "rules.wrongInFolder": "Erróneo, en la carpeta de contenido",
  "rules.right": "Correcto",
  "rules.rightIn": "Correcto, en {file}",
  "rules.rightInFolder": "Correcto, en la carpeta de contenido",
  "rules.leaveOut": "Omitirlo.",
};
