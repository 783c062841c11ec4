// Floor 7. Spanish: what stands around the content of every page, and the page of a missing address.
import type { In } from "../en/all.ts";
import type { frame as english } from "../en/frame.ts";

export const frame: In<typeof english> = {
  "frame.skip": "Ir al contenido",
  "frame.gallery": "Galería",
  "frame.studies": "Estudios",
  "frame.survey": "Censo",
  "frame.method": "Método",
  "frame.allStudies": "Todos los estudios",
  "frame.cautions":
    "Cada rediseño que se muestra aquí es un estudio no oficial, presentado para su discusión. Las leyes sobre el uso de las banderas difieren: siga las de su lugar y respete la licencia de cada dibujo. Véanse las <cautions>advertencias</cautions> y, para autores, las <rules>reglas de estudios y dibujos</rules>.",
  "frame.publishedBy": "Publicado por {society}.",
  "frame.textsUnder": "Textos bajo <licence>{name}</licence>.",
  "frame.madeWith":
    "Hecho con Counterchange. Compuesto en Source Serif 4 y Source Sans 3, bajo la <licence>Open Font Licence</licence>.",
  "frame.missing": "Aquí no hay página",
  "frame.missingText":
    "No hay página en esta dirección. Puede que un estudio se haya retirado de la galería, o que la dirección esté mal escrita.",
  "frame.missingDescription": "No hay página en esta dirección.",
  "frame.moved": "Esta página se ha trasladado: {title}.",
};
