// Part. The form that finds studies, which a script brings to life.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { Finder } from "../../src/views/front/front.ts";
import { Message, useSay } from "./words.tsx";

/** The form; hidden until the script that answers it runs. */
export function FinderForm({ finder, count }: { finder: Finder; count: string }): JSX.Element {
  const say = useSay();
  return (
    <search>
      <form class="finder" data-words-file={finder.words} hidden>
        <p class="field wide">
          <label for="find-words">{say("finder.words")}</label>
          <input type="search" id="find-words" name="q" autocomplete="off" />
        </p>
        <Choice name="order" label={say("finder.order")} options={finder.orders} />
        {finder.choices.length > 0 && (
          <details class="wide more-filters">
            <summary>{say("finder.more")}</summary>
            {finder.choices.map((choice) => (
              <Choice
                key={choice.name}
                {...choice}
                options={[{ value: "", text: say("finder.any") }, ...choice.options]}
              />
            ))}
          </details>
        )}
        <div class="field buttons answer">
          <button type="submit">{say("finder.find")}</button>
          <button type="reset">{say("finder.all")}</button>
          <p class="found" role="status" data-found={finder.found} data-all={count}>
            {count}
          </p>
        </div>
      </form>
      <p class="none-found" hidden>
        {say("finder.none")}
      </p>
      <p class="pages-found" hidden>
        <Message id="finder.pages" tags={{ list: () => <span /> }} />
      </p>
    </search>
  );
}

/** A field to choose one of. */
function Choice({
  name,
  label,
  options,
}: {
  name: string;
  label: string;
  options: Finder["orders"];
}): JSX.Element {
  return (
    <p class="field">
      <label for={`find-${name}`}>{label}</label>
      <select id={`find-${name}`} name={name}>
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.text}
          </option>
        ))}
      </select>
    </p>
  );
}
