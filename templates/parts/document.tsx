// Part. The whole document: head, masthead, one main, foot.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { ComponentChildren, JSX } from "preact";
import type { Frame } from "../../src/site/present/page.ts";
import { Foot } from "./foot.tsx";
import { Masthead } from "./masthead.tsx";

/** One page. `layout` names the page type for the style sheet. */
export function Document({
  frame,
  layout,
  children,
}: {
  frame: Frame;
  layout: string;
  children: ComponentChildren;
}): JSX.Element {
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
        {frame.canonical && <link rel="canonical" href={frame.canonical} />}
        {frame.links.fonts.map((font) => (
          <link key={font} rel="preload" href={font} as="font" type="font/woff2" crossorigin="anonymous" />
        ))}
        <link rel="stylesheet" href={frame.links.styles} />
        <script src={frame.links.script} defer />
      </head>
      <body class={layout}>
        <a class="skip" href="#content">
          Skip to the content
        </a>
        <Masthead frame={frame} />
        <main id="content" tabindex={-1}>
          {children}
        </main>
        <Foot frame={frame} />
      </body>
    </html>
  );
}
