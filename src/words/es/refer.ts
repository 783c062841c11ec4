// Floor 7. Spanish: how to cite a study, and the stamp of its state.
import type { In } from "../en/all.ts";
import type { refer as english } from "../en/refer.ts";

export const refer: In<typeof english> = {
  "refer.heading": "Citar este estudio",
  "refer.copyText": "Copiar el texto",
  "refer.copyBibtex": "Copiar el BibTeX",
  "refer.copied": "Copiado.",
  "refer.notCopied": "El navegador no lo permitió.",
  "refer.bibtexAndStamp": "BibTeX, y para qué sirve el sello",
  "refer.stamp":
    "Sello <stamp></stamp>: una marca breve del dibujo, del cambio y de la medida. Por <link>una dirección que lo lleva</link>, un lector posterior sabe si ha cambiado desde entonces lo que se mide. Las palabras de un estudio pueden cambiar sin él.",
  "refer.changed":
    "<strong>Este estudio ha cambiado desde entonces.</strong> El enlace por el que vino era de un estado anterior, con el sello <came></came>. Lo que se muestra ahora lleva el sello <now></now>.",
  "refer.study": "estudio no oficial de rediseño de bandera",
  "refer.edge": "un límite de un estudio no oficial de rediseño de bandera",
  "refer.series": "serie de estudios no oficiales de rediseño de banderas",
  "refer.title": "«{title}»",
};
