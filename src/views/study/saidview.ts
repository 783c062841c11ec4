// Floor 8. What others said to a study or to one edge of it, oldest first, each with the author's reply.

import { findNamedChange } from "../../analysis/options/namedchange.ts";
import type { StudyResult } from "../../analysis/result.ts";
import { findNamedEdge } from "../../content/study/prosecheck.ts";
import type { StudyAnswer } from "../../content/study/study.ts";
import type { ComparedEdge } from "../../measure/comparison.ts";
import { compareText } from "../../problem/problem.ts";
import { describeAnswer, describeReply } from "../../words/answerphrase.ts";
import type { Format } from "../../words/format.ts";
import { formatNames } from "../../words/phrase.ts";
import type { PlaceEdge } from "../edge/edgeaddress.ts";
import { renderProse } from "../renderprose.ts";
import { changeId } from "./matrixview.ts";

type Said = Pick<StudyResult, "study" | "comparison" | "ranking">;

interface Linked {
  readonly name: string;
  readonly address: string;
}

/** One answer. The anchor stays where others answer later. */
export interface SaidView {
  readonly anchor: string;
  readonly lead: string;
  readonly date: { readonly iso: string; readonly text: string } | undefined;
  /** The edge and the other single change it is about, where the page is not that edge's own. */
  readonly about: readonly Linked[];
  /** HTML that we wrote. */
  readonly html: readonly string[];
  readonly link: string | undefined;
  readonly reply: { readonly lead: string; readonly html: readonly string[] } | undefined;
}

/** The answers to a study; `address` places the edges that they are about, `changes` is the page of the other changes. */
export function presentSaid(
  { study, comparison, ranking }: Said,
  address: PlaceEdge,
  changes: string,
  format: Format,
): readonly SaidView[] {
  return orderAnswers(study.answers).map((answer) => {
    const edge = findAnswered(answer, comparison.edges);
    return presentOne(
      answer,
      [
        ...(edge ? [{ name: formatNames(edge.names[0], format), address: address(edge) }] : []),
        ...linkChange(answer, ranking, changes),
      ],
      format,
    );
  });
}

/** The answers about other single changes, for their page. */
export function presentSaidOfChanges({ study, ranking }: Said, format: Format): readonly SaidView[] {
  return orderAnswers(study.answers).flatMap((answer) => {
    const about = linkChange(answer, ranking, "");
    return about.length === 0 ? [] : presentOne(answer, about, format);
  });
}

function linkChange({ option }: StudyAnswer, ranking: Said["ranking"], page: string): readonly Linked[] {
  const change = option === undefined ? undefined : findNamedChange(option, ranking?.matrix);
  return change ? [{ name: change.name, address: `${page}#${changeId(change.replace, change.with)}` }] : [];
}

/** The answers about one edge, for its own page. */
export function presentSaidOf(
  { study, comparison }: Said,
  edge: ComparedEdge,
  format: Format,
): readonly SaidView[] {
  return orderAnswers(study.answers)
    .filter((answer) => findAnswered(answer, comparison.edges) === edge)
    .map((answer) => presentOne(answer, [], format));
}

/** The oldest first, undated last, then by key. */
function orderAnswers(answers: readonly StudyAnswer[] = []): readonly StudyAnswer[] {
  return [...answers].sort((a, b) => compareText(a.date ?? "~", b.date ?? "~") || compareText(a.key, b.key));
}

function findAnswered({ edge }: StudyAnswer, edges: readonly ComparedEdge[]): ComparedEdge | undefined {
  return edge === undefined ? undefined : findNamedEdge(edge, edges);
}

function presentOne(answer: StudyAnswer, about: SaidView["about"], format: Format): SaidView {
  const { key, date, text, link, reply } = answer;
  return {
    anchor: `answer-${key}`,
    lead: describeAnswer(answer, format),
    date: date === undefined ? undefined : { iso: date, text: format.date(date) },
    about,
    html: renderText(text),
    link,
    reply: reply && { lead: describeReply(reply, format), html: renderText(reply.text) },
  };
}

/** Without figures: those are the author's. */
function renderText(text: string): readonly string[] {
  return renderProse(text, () => undefined).flatMap((block) => (block.kind === "html" ? [block.html] : []));
}
