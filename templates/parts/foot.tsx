// Part. The foot of every page: what a redesign is, and the cautions.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { Frame } from "../../src/views/pageframe.ts";

/** The foot of a page. */
export function Foot({ frame }: { frame: Frame }): JSX.Element {
  return (
    <footer class="foot">
      <p>
        Every redesign shown here is an unofficial study, put forward for discussion. Laws on the use of flags
        differ: follow the local ones, and respect the licence of each drawing. See the{" "}
        <a href={frame.links.cautions}>cautions</a>, and for authors the{" "}
        <a href={frame.links.rules}>rules for studies and drawings</a>.
        {frame.links.takePart && (
          <>
            {" "}
            <a href={frame.links.takePart.address}>{frame.links.takePart.text}</a>
          </>
        )}
      </p>
      <p>
        {frame.society && `Published by ${frame.society}. `}
        {frame.footer && `${frame.footer} `}
        {frame.licence && (
          <>
            Texts under{" "}
            {frame.licence.address ? (
              <a href={frame.licence.address} rel="license">
                {frame.licence.name}
              </a>
            ) : (
              frame.licence.name
            )}
            .{" "}
          </>
        )}
        Made with Counterchange. Set in Source Serif 4 and Source Sans 3, under the{" "}
        <a href={frame.links.fontLicence}>Open Font Licence</a>.
      </p>
    </footer>
  );
}
