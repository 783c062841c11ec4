// Floor 7. Spanish: the vote on a series, flag by flag.
import type { In } from "../en/all.ts";
import type { vote as english } from "../en/vote.ts";

export const vote: In<typeof english> = {
  "vote.title": "Votación: {series}",
  "vote.description":
    "¿Original o rediseño? Una votación sobre {series}, bandera a bandera, antes de ver ninguna cifra.",
  "vote.on": "Una votación sobre <a>{series}</a>",
  "vote.heading": "¿Cuál izaría usted?",
  "vote.how":
    "La bandera como es, y lo que se propone en su lugar. Cuál es cuál no se dice, ni se muestra cifra alguna, hasta que usted haya elegido.",
  "vote.unscripted":
    "Para votar en esta página hace falta un script, que este navegador no ejecuta. En una sala se hace sin él: imprima la página, alce las banderas una a una y marque una casilla por cada mano. Cada pregunta dice al final cuál es cuál.",
  "vote.questions": "Preguntas",
  "vote.back": "Atrás",
  "vote.next": "Siguiente",
  "vote.place": "{number} de {count}",
  "vote.flag": "Bandera {number}",
  "vote.alt": "Una bandera: {paints}",
  "vote.neither": "Ninguna",
  "vote.original": "El original",
  "vote.redesign": "El rediseño",
  "vote.redesignOf": "El rediseño «{title}»",
  "vote.unofficial": "{name}, un estudio no oficial",
  "vote.cautionOne": "Una de ellas es la bandera como es; lo propuesto es un estudio no oficial.",
  "vote.cautionMany": "Una de ellas es la bandera como es; lo propuesto son estudios no oficiales.",
  "vote.why": "¿Por qué? (opcional)",
  "vote.choose": "Esta es mi elección",
  "vote.missing": "Elija antes una bandera, o ninguna.",
  "vote.told": "Cuál es cuál, y las cifras",
  "vote.which": "{flag}: cuál es cuál",
  "vote.headFlag": "Bandera",
  "vote.headChosen": "Elegida, de {count, plural, one {# votante} other {# votantes}}",
  "vote.own": "su elección",
  "vote.range": "de {low} a {high}",
  "vote.study": "El estudio",
  "vote.verdictOf": "{name}: {sentence}",
  "vote.said": "<quiet>{side}:</quiet> <said></said>",
  "vote.ballot": "Su papeleta",
  "vote.answer": "{flag}: {choice}",
  "vote.answerWhy": "{flag}: {choice}, «{why}»",
  "vote.unanswered": "{flag}: sin respuesta",
  "vote.kept":
    "Se guarda solo en este navegador, con un número sacado a suerte, y nadie sabe de ella hasta que usted la entregue.",
  "vote.copy": "Copiar esta línea",
  "vote.copied": "Copiado.",
  "vote.refused": "El navegador no lo permitió; seleccione la línea y cópiela.",
  "vote.save": "Guardar como tabla (CSV)",
  "vote.mail": "Enviar por correo",
  "vote.form": "Enviar con un formulario",
  "vote.anew": "Empezar otra papeleta",
  "vote.letter": "Una papeleta sobre {series}",
  "vote.room": "Para una clase o una reunión",
  "vote.same":
    "<same>El mismo orden para todos</same> · <own>Un orden propio</own>. Con el primero, quien lo abra ve A y B como usted las ve ahora; con el segundo, cada cual las ve en un orden sacado a suerte.",
  "vote.paper":
    "Impresa, esta página es una hoja de recuento: las banderas, casillas para las manos y, en la última página, cuál es cuál.",
  "vote.ballots":
    "{count, plural, one {Volvió # papeleta.} other {Volvieron # papeletas.}} Junto a cada parte está el intervalo en que, con un 95 % de confianza, estaría la de todos si los votantes se hubieran sacado a suerte (intervalo de Wilson); los que vinieron por sí mismos no lo fueron.",
  "vote.noBallots": "Aún no ha vuelto ninguna papeleta.",
  "vote.key": "Para quien cuenta: cuál es cuál",
  "vote.sides": "{flag}: <sides></sides>",
};
