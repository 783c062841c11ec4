// Floor 5. The first text of a gallery.yaml.
import { defaultGallery } from "./galleryfile.ts";
import { schemaLine } from "./schemastamp.ts";

/** Returns the text of a new gallery.yaml, right as it stands; `schema` is where an editor finds its schema. */
export function writeGalleryFile(schema: string): string {
  const { title, description, address, language } = defaultGallery;
  return `${schemaLine(schema)}
title: ${title}
description: "${description}"
# The whole address of the front page. Put in the real one before you publish: feeds and link pictures carry it.
address: ${address}
language: ${language}

# Take the # away and fill in:
# society: The Sound Flag Society
# viewingDistance: 40               # from how many flag heights away flags are measured
# cloth: { black: 5, white: 85 }    # how much light the cloth gives back, in percent
# palette: { white: "#ffffff", sea green: "#2e8b70" }   # the colours that are tried
# compareWith: collection           # a folder of drawings that redesigns are compared with
# answer: editor@flags.example      # where readers answer: a mail address, or the https:// address of a form
# nominate: editor@flags.example    # where readers name a flag that needs a study
# terms: { tincture: false }        # facts of taste to leave out: tincture, colours, likeness, symbolism
`;
}
