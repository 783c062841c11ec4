// Part. The foot of every page: what a redesign is, and the cautions.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { Frame } from "../../src/views/pageframe.ts";
import { Message, useSay } from "./words.tsx";

/** The foot of a page. */
export function Foot({ frame }: { frame: Frame }): JSX.Element {
  const say = useSay();
  const { society, footer, licence, links } = frame;
  return (
    <footer class="foot">
      <p>
        <Message
          id="frame.cautions"
          tags={{
            cautions: (text) => <a href={links.cautions}>{text}</a>,
            rules: (text) => <a href={links.rules}>{text}</a>,
          }}
        />
        {links.takePart && (
          <>
            {" "}
            <a href={links.takePart.address}>{links.takePart.text}</a>
          </>
        )}
      </p>
      <p>
        {society && `${say("frame.publishedBy", { society })} `}
        {footer && `${footer} `}
        {licence && (
          <>
            <Message
              id="frame.textsUnder"
              values={{ name: licence.name }}
              tags={{
                licence: (text) => (
                  <>
                    {licence.address ? (
                      <a href={licence.address} rel="license">
                        {text}
                      </a>
                    ) : (
                      text
                    )}
                  </>
                ),
              }}
            />{" "}
          </>
        )}
        <Message id="frame.madeWith" tags={{ licence: (text) => <a href={links.fontLicence}>{text}</a> }} />
      </p>
    </footer>
  );
}
