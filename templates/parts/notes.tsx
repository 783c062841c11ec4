// Part. What stands beside the numbers: options the author tried, credit, downloads.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { CreditView, Download, NotedColour, OptionNote } from "../../src/views/study/notes.ts";
import { Arrow } from "./move.tsx";
import { SwatchChip } from "./swatch.tsx";
import { Message, useSay } from "./words.tsx";

/** The changes the author tried instead, with what was said of each. */
export function OptionList({ options }: { options: readonly OptionNote[] }): JSX.Element {
  return (
    <ul class="options">
      {options.map((option) => (
        <li key={`${option.replace.text} ${option.with.text} ${option.only ?? ""}`}>
          <p class="option-change">
            <Noted colour={option.replace} /> <Arrow /> <Noted colour={option.with} />
            {option.only && (
              <>
                {" "}
                <Message
                  id="record.onlyIn"
                  values={{ part: option.where ?? "" }}
                  tags={{ selector: () => <code>{option.only}</code> }}
                />
              </>
            )}
          </p>
          {option.note && <p>{option.note}</p>}
        </li>
      ))}
    </ul>
  );
}

/** Whose drawing it is and under which licence. */
export function CreditLine({ credit }: { credit: CreditView }): JSX.Element {
  const say = useSay();
  return (
    <p>
      {credit.sentence}.{" "}
      {credit.source ? (
        <a href={credit.source} rel="nofollow noopener">
          {say("record.source")}
        </a>
      ) : (
        credit.sourceText && say("record.sourceIs", { source: credit.sourceText })
      )}
      {credit.sourceText && ". "}
      {say("record.licence", { licence: credit.licence })}
    </p>
  );
}

/** The files a reader can take away. */
export function DownloadList({ downloads }: { downloads: readonly Download[] }): JSX.Element {
  return (
    <ul class="downloads">
      {downloads.map((download) => (
        <li key={download.address}>
          <a href={download.address} download={download.file}>
            {download.text}
          </a>
        </li>
      ))}
    </ul>
  );
}

function Noted({ colour }: { colour: NotedColour }): JSX.Element {
  return (
    <span class="named">
      {colour.swatch && <SwatchChip hex={colour.swatch.hex} />} {colour.text}
    </span>
  );
}
