// Floor 5. The keys of gallery.yaml: which there are, what each may hold, and what one looks like.
import { z } from "zod";
import type { KeyGuide } from "../yaml/finding.ts";
import { line } from "../yaml/textvalue.ts";

/** The keys of gallery.yaml. The descriptions go into the JSON Schema that editors read. */
export const gallerySchema = z.strictObject({
  title: line(200).describe("The heading of the front page.").exactOptional(),
  description: line(500).describe("What the gallery is about, in a sentence.").exactOptional(),
  address: line(500)
    .describe("The whole address of the front page: feeds, link pictures and the site map carry it.")
    .exactOptional(),
  language: line(60).describe("The language of the texts, as a tag of BCP 47.").exactOptional(),
  society: line(200).describe("Who publishes the gallery.").exactOptional(),
  footer: line(300).describe("A sentence or two at the foot of every page.").exactOptional(),
  licence: line(200)
    .describe("Under what the texts may be used: a short name, such as CC-BY-4.0, or an address.")
    .exactOptional(),
  viewingDistance: z
    .number()
    .min(0)
    .max(1000)
    .describe("From how many flag heights away flags are measured; 40 unless said otherwise.")
    .exactOptional(),
  cloth: z
    .strictObject({
      black: z.number().min(0).max(100).describe("Of the blackest cloth; 5 unless said otherwise."),
      white: z.number().min(0).max(100).describe("Of the whitest cloth; 85 unless said otherwise."),
    })
    .describe("How much light the cloth gives back, in percent.")
    .exactOptional(),
  palette: z
    .record(z.string(), line(100))
    .describe("The colours that changes may name and that are tried: name, then hex in quotes.")
    .exactOptional(),
  compareWith: line(200)
    .describe("A folder of drawings in the content folder that redesigns are compared with.")
    .exactOptional(),
  answer: line(1000)
    .describe(
      "Where readers answer: a mail address, or a form's https:// address with {url}, {title}, {edge} and {numbers} filled in.",
    )
    .exactOptional(),
  nominate: line(1000)
    .describe("Where readers name a flag that needs a study: a mail address, or a form, as in answer.")
    .exactOptional(),
  terms: z
    .strictObject({
      tincture: z.boolean().describe("The rule of tincture.").exactOptional(),
      colours: z.boolean().describe("How many colours a flag has.").exactOptional(),
      likeness: z.boolean().describe("Which flag a redesign could be mistaken for.").exactOptional(),
      symbolism: z.boolean().describe("What the author says that the change means.").exactOptional(),
    })
    .describe("Which facts of taste the pages show: all, but for those that are false here.")
    .exactOptional(),
});

/** How gallery.yaml and its keys are called in messages, and an example of each. */
export const galleryGuide: KeyGuide = {
  whole: "gallery.yaml",
  examples: {
    title: "title: Flags of the Sound",
    description: "description: What the members propose, measured.",
    address: "address: https://flags.example/",
    language: "language: en-GB",
    society: "society: The Sound Flag Society",
    footer: "footer: The society meets on the first Tuesday of the month.",
    licence: "licence: CC-BY-4.0",
    viewingDistance: "viewingDistance: 40",
    cloth: "cloth: { black: 5, white: 85 }",
    "cloth.black": "black: 5",
    "cloth.white": "white: 85",
    palette: 'palette: { white: "#ffffff", sea green: "#2e8b70" }',
    compareWith: "compareWith: collection",
    answer: "answer: editor@flags.example",
    nominate: "nominate: editor@flags.example",
    terms: "terms: { tincture: false, colours: false }",
    "terms.tincture": "tincture: false",
    "terms.colours": "colours: false",
    "terms.likeness": "likeness: false",
    "terms.symbolism": "symbolism: false",
  },
};
