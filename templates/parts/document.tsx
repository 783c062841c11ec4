// Part. The whole document: head, masthead, one main, foot.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { ComponentChildren, JSX } from "preact";
import type { Frame, ShareView } from "../../src/views/pageframe.ts";
import { Foot } from "./foot.tsx";
import { Masthead } from "./masthead.tsx";
import { useSay } from "./words.tsx";

/** One page. `layout` names the page type for the style sheet; `scripts` and `head` are what only this type needs. */
export function Document({
  frame,
  layout,
  scripts = [],
  head,
  children,
}: {
  frame: Frame;
  layout: string;
  scripts?: readonly string[];
  head?: ComponentChildren;
  children: ComponentChildren;
}): JSX.Element {
  const say = useSay();
  return (
    <html lang={frame.language} dir={frame.direction}>
      <head>
        <meta http-equiv="Content-Security-Policy" content={frame.policy} />
        <meta charset="utf-8" />
        <title>{frame.title}</title>
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="description" content={frame.description} />
        <meta name="color-scheme" content="light dark" />
        <meta name="referrer" content="no-referrer" />
        {head}
        {frame.canonical && <link rel="canonical" href={frame.canonical} />}
        {frame.share && <Share frame={frame} share={frame.share} />}
        {frame.links.fonts.map((font) => (
          <link key={font} rel="preload" href={font} as="font" type="font/woff2" crossorigin="anonymous" />
        ))}
        <link rel="icon" href={frame.links.icon} type="image/svg+xml" />
        <link rel="icon" href={frame.links.iconPng} type="image/png" sizes="96x96" />
        {frame.links.feeds.map((feed) => (
          <link
            key={feed.address}
            rel="alternate"
            href={feed.address}
            type={feed.type}
            title={frame.galleryTitle}
          />
        ))}
        <link rel="stylesheet" href={frame.links.styles} />
        {["method", "rules", "own", "takepart", "vote", "sheets"].includes(layout) && (
          <link rel="stylesheet" href={frame.links.methodStyles} />
        )}
        <script src={frame.links.script} defer />
        {scripts.map((script) => (
          <script key={script} src={script} defer />
        ))}
      </head>
      <body class={layout}>
        <a class="skip" href="#content">
          {say("frame.skip")}
        </a>
        <Masthead frame={frame} isNamed={layout !== "front"} />
        <main id="content" tabindex={-1}>
          {children}
        </main>
        <Foot frame={frame} />
      </body>
    </html>
  );
}

/** For sites that show links: Open Graph, and a record for search. The record is data and is never run. */
function Share({ frame, share }: { frame: Frame; share: ShareView }): JSX.Element {
  return (
    <>
      <meta property="og:title" content={share.title} />
      <meta property="og:description" content={frame.description} />
      <meta property="og:type" content={share.kind} />
      <meta property="og:url" content={frame.canonical} />
      <meta property="og:site_name" content={frame.galleryTitle} />
      {share.picture && (
        <>
          <meta property="og:image" content={share.picture.address} />
          <meta property="og:image:type" content="image/png" />
          <meta property="og:image:width" content="1200" />
          <meta property="og:image:height" content="630" />
          <meta property="og:image:alt" content={share.picture.alt} />
          <meta name="twitter:card" content="summary_large_image" />
        </>
      )}
      {share.record && (
        <script type="application/ld+json" dangerouslySetInnerHTML={{ __html: share.record }} />
      )}
    </>
  );
}
