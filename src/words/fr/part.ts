// Floor 7. French: the page by which readers propose a study, with the words of its script and of the letter.
import type { In } from "../en/all.ts";
import type { part as english } from "../en/part.ts";

export const part: In<typeof english> = {
  "part.link": "Proposer une étude",
  "part.title": "Proposer une étude",
  "part.description":
    "Comment proposer à cette galerie une étude de drapeau redessiné : deux fichiers, et une lettre pour les envoyer.",
  "part.lede":
    "Une étude est un dossier de deux fichiers : le dessin d’un drapeau, et un texte qui nomme un changement de couleur et le défend. Il n’y faut ni compte ni programme.",
  "part.files": "Les deux fichiers",
  "part.drawing":
    "original.svg : le drapeau tel qu’il est, dessiné en SVG, 512 Ko au plus. Les images en pixels et les photographies ne peuvent être recolorées.",
  "part.study":
    "study.md : du texte simple. Entre les deux lignes de tirets viennent le titre, la couleur remplacée et celle qui prend sa place ; en dessous, vos raisons.",
  "part.credit":
    "Si le dessin n’est pas de vous, dites de qui il est et sous quelle licence, par une ligne comme celle-ci, au-dessus de la seconde ligne de tirets :",
  "part.template": "Un texte pour commencer",
  "part.sampleTitle": "Une roue plus claire",
  "part.sampleFlag": "Le drapeau du bac",
  "part.sampleWhy": "Pourquoi ce changement, ce qu’on ne voyait pas auparavant, et ce qu’il coûte.",
  "part.send": "L’envoyer",
  "part.sendByMail": "Joignez le dessin à la lettre : aucune page ne peut le faire pour vous.",
  "part.sendAtForm": "Joignez-y le dessin si les fichiers sont acceptés, ou dites où le trouver.",
  "part.letter": "Écrire la lettre",
  "part.byMail": "par courriel à {address}, texte compris.",
  "part.atForm": "sur {host}, texte compris.",
  "part.atFormEmpty": "sur {host} ; copiez d’abord le texte.",
  "part.subject": "Une étude pour {gallery}",
  "part.try": "Essayer un changement",
  "part.private": "Le dessin reste sur votre ordinateur : cette page n’envoie rien et ne retient rien.",
  "part.choose": "Choisir un dessin (SVG)",
  "part.tooBig": "Ce fichier dépasse 512 Ko, la taille maximale d’un dessin.",
  "part.broken":
    "Ce fichier ne peut être lu comme dessin SVG. Enregistrez-le de nouveau en SVG simple, et choisissez ce fichier.",
  "part.endless": "Ce dessin est trop grand pour être montré ici, ou renvoie sans fin à lui-même.",
  "part.colourless": "Aucune couleur à remplacer n’a été trouvée dans ce dessin.",
  "part.chosen": "Le dessin est montré plus bas, avec ses couleurs.",
  "part.replace": "Remplacer",
  "part.palette": "par une couleur de la galerie",
  "part.typed": "ou par une autre, à saisir",
  "part.unknown": "Ce n’est pas une couleur qui cache ce qui est derrière. Saisissez par exemple #f4c430.",
  "part.same": "C’est la couleur qui y est déjà.",
  "part.before": "Avant",
  "part.after": "Après",
  "part.beforeShown": "Le dessin tel qu’il est",
  "part.afterShown": "Le dessin avec le changement",
  "part.pairs": "Contraste de ses couleurs",
  "part.pair": "Paire",
  "part.rough":
    "Ce sont des valeurs approchées pour chaque paire de couleurs, qu’elles se touchent ou non. La galerie mesure les limites mêmes, avec leurs longueurs, et regarde à distance ; ses chiffres font foi.",
  "part.more": "Seules les douze premières couleurs sont comparées ici.",
  "part.text": "Votre texte",
  "part.textTitle": "Titre de l’étude",
  "part.textFlag": "Comment s’appelle le drapeau",
  "part.textAuthor": "Votre nom, tel qu’il sera publié",
  "part.textWhy": "Pourquoi ce changement",
  "part.untitled":
    "Donnez à l’étude un titre et dites pourquoi : le texte ci-dessous pourra alors être envoyé.",
  "part.ready": "Enregistrez ceci sous le nom study.md à côté du dessin, ou envoyez-le tel quel.",
  "part.copy": "Copier le texte",
  "part.copied": "Copié.",
  "part.refused": "Le navigateur ne l’a pas permis ; sélectionnez le texte et copiez-le.",
  "part.unscripted":
    "Avec des scripts, cette page montre un dessin de votre ordinateur avec le changement et écrit le texte pour vous. Sans eux, copiez le texte ci-dessus et complétez-le.",
};
