// Part. The line over every page: the gallery's name and the ways in.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { Frame } from "../../src/views/pageframe.ts";
import { useSay } from "./words.tsx";

/** The masthead of a page, with the current section marked. The front page has the gallery's name as its title. */
export function Masthead({ frame, isNamed }: { frame: Frame; isNamed: boolean }): JSX.Element {
  const say = useSay();
  // Its words stand beside it.
  const logo = frame.logo && <img class="masthead-logo" {...frame.logo} alt="" />;
  return (
    <header class="masthead">
      {(isNamed || logo) && (
        <p class="masthead-name">
          {isNamed ? (
            <a href={frame.links.home}>
              {logo}
              {frame.galleryTitle}
            </a>
          ) : (
            logo
          )}
        </p>
      )}
      <nav aria-label={say("frame.gallery")}>
        <ul>
          <li>
            <a href={frame.links.home} aria-current={frame.section === "studies" ? "true" : undefined}>
              {say("frame.studies")}
            </a>
          </li>
          <li>
            <a href={frame.links.survey} aria-current={frame.section === "survey" ? "true" : undefined}>
              {say("frame.survey")}
            </a>
          </li>
          <li>
            <a href={frame.links.method} aria-current={frame.section === "method" ? "true" : undefined}>
              {say("frame.method")}
            </a>
          </li>
          {frame.menu.map(({ word, address, isHere }) => (
            <li key={address}>
              <a href={address} aria-current={isHere ? "true" : undefined}>
                {word}
              </a>
            </li>
          ))}
        </ul>
      </nav>
    </header>
  );
}
