// Floor 7. Arabic: lists of the studies of one author, with one tag, that are decided, or of all of them.
import type { In } from "../en/all.ts";
import type { shelf as english } from "../en/shelf.ts";

export const shelf: In<typeof english> = {
  "shelf.studies":
    "{count, plural, zero {لا دراسات} one {دراسة واحدة} two {دراستان} few {# دراسات} many {# دراسة} other {# دراسة}}",
  "shelf.authorCount":
    "{count, plural, zero {لا مؤلفين} one {مؤلف واحد} two {مؤلفان} few {# مؤلفين} many {# مؤلفًا} other {# مؤلف}}",
  "shelf.tagCount":
    "{count, plural, zero {لا وسوم} one {وسم واحد} two {وسمان} few {# وسوم} many {# وسمًا} other {# وسم}}",
  "shelf.decisionCount":
    "{count, plural, zero {لا قرارات} one {قرار واحد} two {قراران} few {# قرارات} many {# قرارًا} other {# قرار}}",
  "shelf.authors": "المؤلفون",
  "shelf.authorsLede": "كل من قدّم دراسة هنا، مع ما يقترحه.",
  "shelf.noAuthors": "لا دراسة تسمّي مؤلفًا بعد. هنا سيكون أول اسم.",
  "shelf.tags": "الوسوم",
  "shelf.tagsLede": "موضوعات الدراسات، بكلمات مؤلفيها.",
  "shelf.noTags": "لا وسم لدراسة بعد. يضيفها المؤلفون في ملفات دراساتهم.",
  "shelf.author": "المؤلف",
  "shelf.tag": "الوسم",
  "shelf.list": "قائمة",
  "shelf.record": "سجل",
  "shelf.decisions": "القرارات",
  "shelf.ways": "{studies}. <index>{name}</index>، <all>كل الدراسات</all>",
  "shelf.waysOrdered": "{studies}، الأحدث أولًا. <index>{name}</index>، <all>كل الدراسات</all>",
  "shelf.allAuthors": "كل المؤلفين",
  "shelf.allTags": "كل الوسوم",
  "shelf.byAuthor": "بحسب المؤلف",
  "shelf.aboutAuthor":
    "{count, plural, zero {لا دراسات} one {دراسة واحدة} two {دراستان} few {# دراسات} many {# دراسة} other {# دراسة}}، المؤلف: {name}. لون واحد يتغير، وكل حافة تُقاس.",
  "shelf.aboutTag":
    "{count, plural, zero {لا دراسات} one {دراسة واحدة} two {دراستان} few {# دراسات} many {# دراسة} other {# دراسة}}، الوسم: {name}. لون واحد يتغير، وكل حافة تُقاس.",
  "shelf.aboutDecisions":
    "{count, plural, zero {لا دراسات صدر فيها قرار} one {دراسة واحدة صدر فيها قرار} two {دراستان صدر فيهما قرار} few {# دراسات صدر فيها قرار} many {# دراسة صدر فيها قرار} other {# دراسة صدر فيها قرار}}: لون واحد يتغير، وكل حافة تُقاس.",
  "shelf.aboutAll":
    "{count, plural, zero {لا دراسات} one {دراسة واحدة} two {دراستان} few {# دراسات} many {# دراسة} other {# دراسة}} في الجملة: لون واحد يتغير، وكل حافة تُقاس.",
  "shelf.with": "مع {authors}",
};
