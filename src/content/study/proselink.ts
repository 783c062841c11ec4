// Floor 5. Links in prose: where they may lead, and whether their text says another address than they lead to.
import type MarkdownIt from "markdown-it";

type StateCore = InstanceType<MarkdownIt["core"]["State"]>;
type Token = ReturnType<MarkdownIt["parse"]>[number];

/**
 * The addresses that a link may lead to, as their beginnings: of the web, of mail, or relative to the page: where a site begins
 * is not known. Browsers take `https:a` and `\\\\a` for other sites, and what stands before an `@` for the name of a user, not of
 * a host (WHATWG URL Standard, section 4.4).
 */
const linkable = /^(?:https?:\/\/(?![/\\]|%5c|[^/\\?#]*@)|mailto:|(?![a-z][a-z0-9+.-]*:|[/\\]|%5c))/i;

/** A text that is an address of the web, with its host; a name of a file is none. */
const address =
  /^\s*(?:https?:\/\/)?((?:[\p{L}\p{N}-]+\.)+(?!(?:html?|md|pdf|svg|png|webp|jpe?g|txt|csv)\b)\p{L}{2,})(?=[\s:/?#@]|$)/iu;

/** A link whose text is of the host `said`, and that leads to the host `leads`. */
export interface FalseLink {
  readonly said: string;
  readonly leads: string;
}

/**
 * Takes links that may lead nowhere out of a block, and leaves their text; the first such address is then its `meta`. Behind
 * a link whose text is another address stands the host that it leads to.
 */
export function dropLinks(block: Token, { Token: Piece }: Pick<StateCore, "Token">): void {
  const shown: Token[] = [];
  let open: { readonly href: string; readonly from: number } | undefined;
  for (const child of block.children ?? []) {
    if (child.type === "link_open") {
      const href = child.attrGet("href") ?? "";
      if (!linkable.test(href)) {
        block.meta ??= href;
        continue;
      }
      open = { href, from: shown.length };
    }
    if (child.type !== "link_close") {
      shown.push(child);
      continue;
    }
    if (open === undefined) continue;
    const found = compareHosts(open.href, shown.slice(open.from));
    shown.push(child);
    if (found !== undefined)
      shown.push(Object.assign(new Piece("text", "", 0), { content: ` (${found.leads})` }));
    open = undefined;
  }
  if (block.children) block.children = shown;
}

/** Returns the first link of a block whose text is another address than it leads to. */
export function findFalseLink({ children }: Token): FalseLink | undefined {
  const pieces = children ?? [];
  return pieces
    .map((piece, at) => {
      const href = piece.type === "link_open" ? piece.attrGet("href") : null;
      const end = pieces.findIndex(({ type }, index) => index > at && type === "link_close");
      return href === null ? undefined : compareHosts(href, pieces.slice(at, end));
    })
    .find((found) => found !== undefined);
}

function compareHosts(href: string, inside: readonly Token[]): FalseLink | undefined {
  const text = inside.map(({ content }) => content).join("");
  const said = address.exec(text.normalize("NFKC").replace(/[。․]/g, "."))?.[1];
  const leads = hostOf(href);
  if (said === undefined || leads === undefined || hostOf(`https://${said}`) === leads) return undefined;
  return { said, leads };
}

/** Without `www.`, and letters that are not ASCII as `xn--…`. Undefined for what is no address of the web. */
function hostOf(href: string): string | undefined {
  if (!/^https?:/i.test(href) || !URL.canParse(href)) return undefined;
  return new URL(href).hostname.replace(/^www\./, "");
}
