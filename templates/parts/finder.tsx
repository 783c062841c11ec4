// Part. The ways to find a study: a form that a script brings to life, and lists of tags and authors that need none.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { Finder } from "../../src/views/front/front.ts";
import type { ShelfGroup } from "../../src/views/shelf/shelfindex.ts";

/** The form; hidden until the script that answers it runs. */
export function FinderForm({ finder, count }: { finder: Finder; count: string }): JSX.Element {
  return (
    <search>
      <form class="finder" data-words-file={finder.words} hidden>
        <p class="field wide">
          <label for="find-words">Words</label>
          <input type="search" id="find-words" name="q" autocomplete="off" />
        </p>
        {finder.choices.map((choice) => (
          <p key={choice.name} class="field">
            <label for={`find-${choice.name}`}>{choice.label}</label>
            <select id={`find-${choice.name}`} name={choice.name}>
              <option value="">Any</option>
              {choice.options.map((option) => (
                <option key={option.value} value={option.value}>
                  {option.text}
                </option>
              ))}
            </select>
          </p>
        ))}
        <p class="field">
          <label for="find-order">Order</label>
          <select id="find-order" name="order">
            {finder.orders.map((order) => (
              <option key={order.value} value={order.value}>
                {order.text}
              </option>
            ))}
          </select>
        </p>
        <div class="field buttons answer">
          <button type="submit">Find</button>
          <button type="reset">Show all</button>
          <p class="found" role="status" data-found={finder.found} data-all={count}>
            {count}
          </p>
        </div>
      </form>
      <p class="none-found" hidden>
        No study fits all of this. Take away a word or a choice, or show all.
      </p>
    </search>
  );
}

/** Tags and authors, each with a page of its own. */
export function Shelves({ groups }: { groups: readonly ShelfGroup[] }): JSX.Element | null {
  if (groups.length === 0) return null;
  return (
    <nav class="shelves" aria-label="Tags and authors">
      {groups.map((group) => (
        <ShelfList key={group.kind} group={group} />
      ))}
    </nav>
  );
}

function ShelfList({ group }: { group: ShelfGroup }): JSX.Element {
  return (
    <section aria-labelledby={group.kind}>
      <h2 id={group.kind}>
        <a href={group.address}>{group.heading}</a>
      </h2>
      <ul>
        {group.links.map((shelf) => (
          <li key={shelf.slug}>
            <a href={shelf.address}>{shelf.name}</a> <span class="number quiet">{shelf.count}</span>
          </li>
        ))}
        {group.more && (
          <li>
            <a href={group.address}>{group.more}</a>
          </li>
        )}
      </ul>
    </section>
  );
}
