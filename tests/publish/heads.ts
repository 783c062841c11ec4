// Test support. What the head of a page says to sites that show links and to search. Each check returns what is wrong.

/** Source: schema.org, the types and their properties, from memory; inherited ones stand with each type. */
const thing = "name description url image";
const work = `${thing} inLanguage publisher isPartOf isBasedOn about license creativeWorkStatus genre author creator creditText citation datePublished keywords hasPart position`;
const vocabulary: Readonly<Record<string, string>> = {
  CreativeWork: work,
  WebSite: work,
  CollectionPage: work,
  Thing: thing,
  Person: thing,
  Organization: thing,
};
/** Properties whose value is a thing or an address, never bare text. Source: schema.org, expected types, from memory. */
const noText = new Set([
  "publisher",
  "isPartOf",
  "hasPart",
  "isBasedOn",
  "license",
  "author",
  "creator",
  "url",
  "image",
]);

/** What is wrong with a record, and with every thing in it. */
export function checkRecord(text: string): readonly string[] {
  const { "@context": context, ...record } = JSON.parse(text);
  return [...(context === "https://schema.org" ? [] : ["@context"]), ...checkThing(record)];
}

function checkThing(value: Readonly<Record<string, unknown>>): readonly string[] {
  const type = String(value["@type"]);
  const known = vocabulary[type]?.split(" ");
  if (known === undefined) return [`there is no type ${type}`];
  return Object.entries(value).flatMap(([name, held]) => {
    if (name === "@type") return [];
    if (!known.includes(name)) return [`${type} has no ${name}`];
    return (Array.isArray(held) ? held : [held]).flatMap((one) => {
      if (typeof one === "object" && one !== null) return checkThing(one);
      if (name === "position" && Number.isInteger(one)) return [];
      if (typeof one !== "string" || one === "") return [`${name} holds ${one}`];
      return noText.has(name) && !isAbsolute(one) ? [`${name} is bare text: ${one}`] : [];
    });
  });
}

/** Source: ogp.me, “Basic Metadata” and “Structured Properties”. A page without a picture of its own has none. */
export function checkOpenGraph(document: Document): readonly string[] {
  const said = new Map(
    [...document.querySelectorAll("meta[property^='og:']")].map((meta) => [
      meta.getAttribute("property"),
      meta.getAttribute("content") ?? "",
    ]),
  );
  const faults = ["og:title", "og:type", "og:url", "og:description", "og:site_name"].flatMap((name) =>
    said.get(name) ? [] : [`no ${name}`],
  );
  if (!["website", "article"].includes(said.get("og:type") ?? "")) faults.push("og:type");
  if (said.get("og:url") !== document.querySelector("link[rel=canonical]")?.getAttribute("href"))
    faults.push("og:url is not the canonical address");
  for (const name of ["og:url", "og:image"]) {
    const address = said.get(name);
    if (address !== undefined && !isAbsolute(address)) faults.push(`${name} ${address}`);
  }
  const parts = ["og:image:type", "og:image:width", "og:image:height", "og:image:alt"];
  const has = said.has("og:image");
  for (const part of parts) if (has !== Boolean(said.get(part))) faults.push(`${part} ${said.get(part)}`);
  return faults;
}

function isAbsolute(text: string): boolean {
  return /^https?:\/\/\S+$/.test(text) && URL.canParse(text);
}
