// Floor 7. French: facts beside the numbers of a study.
import type { In } from "../en/all.ts";
import type { facts as english } from "../en/facts.ts";

export const facts: In<typeof english> = {
  "facts.heading": "Des faits à côté des chiffres, dont aucun n’est une note",
  "facts.caption": "Des faits à côté des chiffres",
  "facts.fact": "Fait",
  "facts.clearShareNote":
    "La part des limites nettes saute là où un degré change : elle est une donnée et ne décide de rien. <near>Au seuil</near>",
  "facts.hueNote":
    "La teinte seule : un contraste inférieur à 30 % avec un ΔE00 de 20 ou plus, et de moins de 10 en gris. Une telle limite disparaît au crépuscule, à l’impression en gris et pour bien des lecteurs daltoniens. Ces paliers sont notre propre jugement.",
  "facts.tinctureNote":
    "Règle de contrariété des couleurs : ni métal sur métal, ni couleur sur couleur ; A. C. Fox-Davies, <book>A Complete Guide to Heraldry</book>, 1909, chapitre VII. Les champs partis, les liserés et les fourrures en sont exempts ; les fourrures ne sont pas reconnues ici.",
  "facts.countNote":
    "Couleurs de plus d’un demi pour cent de la surface. Le livret <book>Good Flag, Bad Flag</book>, 2006, en conseille deux ou trois ; les <book>Guiding Principles of Flag Design</book>, 2014, en préfèrent peu.",
  "facts.more": "En savoir plus sur ces faits",
  "facts.clearShare": "Part des limites nettes : nettes ou fortes, sur la longueur de toutes les limites",
  "facts.near": "Degré au seuil, différent sur une autre étoffe",
  "facts.hue": "Distinguées par la teinte seule",
  "facts.tincture": "Contre la règle de contrariété des couleurs",
  "facts.count": "Nombre de couleurs ; les guides en conseillent deux ou trois",
  "facts.none": "aucune",
  "facts.metalOnMetal": "{names}, deux métaux",
  "facts.colourOnColour": "{names}, deux couleurs",
  "facts.ruleKept": "Rien n’y contrevient, ni avant ni après.",
  "facts.ruleBroken": "Y contrevient avant et après : {names}.",
  "facts.ruleMoved": "Y contrevient dans l’original : {was}. Dans le nouveau dessin : {is}.",
  "facts.exemptFimbriation": "Exempt, comme liseré : {names}.",
  "facts.exemptField": "Exempt, comme parties du champ : {names}.",
  "facts.uneven":
    "Une couleur inégale : {name} va de {lightest} à {darkest} ; une limite de cette couleur n’est nette que si ses deux extrêmes le sont.",
};
