// Floor 7. English: lists of the studies of one author, with one tag, that are decided, or of all of them.

export const shelf = {
  "shelf.studies": "{count, plural, one {# study} other {# studies}}",
  /** Ways to the lists, on the front page. */
  "shelf.authorCount": "{count, plural, one {# author} other {# authors}}",
  "shelf.tagCount": "{count, plural, one {# tag} other {# tags}}",
  "shelf.decisionCount": "{count, plural, one {# decision} other {# decisions}}",
  /** Headings of the indexes, what stands below them, and what stands there where they are empty. */
  "shelf.authors": "Authors",
  "shelf.authorsLede": "Everyone who has put a study forward here, with what they propose.",
  "shelf.noAuthors": "No study names an author yet. The first name will stand here.",
  "shelf.tags": "Tags",
  "shelf.tagsLede": "What the studies are about, in the words of their authors, the most used first.",
  "shelf.noTags": "No study has a tag yet. Authors add them in their study files.",
  /** What a page is of, over its title: the name of an author, a tag, or a title. */
  "shelf.author": "Author",
  "shelf.tag": "Tag",
  "shelf.list": "List",
  "shelf.record": "Record",
  "shelf.decisions": "Decisions",
  /** `studies` is “12 studies”, `name` one of the three ways below. */
  "shelf.ways": "{studies}. <index>{name}</index>, <all>all studies</all>",
  "shelf.waysOrdered": "{studies}, newest first. <index>{name}</index>, <all>all studies</all>",
  "shelf.allAuthors": "All authors",
  "shelf.allTags": "All tags",
  "shelf.byAuthor": "By author",
  /** For search. */
  "shelf.aboutAuthor":
    "{count, plural, one {# study} other {# studies}} by {name}: one colour changed, every edge measured.",
  "shelf.aboutTag":
    "{count, plural, one {# study} other {# studies}} tagged {name}: one colour changed, every edge measured.",
  "shelf.aboutDecisions":
    "{count, plural, one {# study} other {# studies}} decided: one colour changed, every edge measured.",
  "shelf.aboutAll":
    "{count, plural, one {# study} other {# studies}} in all: one colour changed, every edge measured.",
  /** On the page of one author, those who wrote a study with them. */
  "shelf.with": "With {authors}",
} as const;
