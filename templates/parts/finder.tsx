// Part. The ways to find a study: a form that a script brings to life, and lists of tags and authors that need none.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { Finder, FrontPage } from "../../src/site/present/front.ts";
import type { ShelfLink } from "../../src/site/present/shelf.ts";

/** The form; hidden until the script that answers it runs. */
export function FinderForm({ finder, count }: { finder: Finder; count: string }): JSX.Element {
  return (
    <search>
      <form class="finder" hidden>
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
        <p class="field buttons">
          <button type="submit">Find</button>
          <button type="reset">Show all</button>
        </p>
        <p class="found" role="status" data-found={finder.found} data-all={count}>
          {count}
        </p>
      </form>
      <p class="none-found" hidden>
        No study fits all of this. Take away a word or a choice, or show all.
      </p>
    </search>
  );
}

/** Tags and authors, each with a page of its own. */
export function Shelves({ front }: { front: FrontPage }): JSX.Element | null {
  if (front.tags.length === 0 && front.authors.length === 0) return null;
  return (
    <nav class="shelves" aria-label="Tags and authors">
      {front.tags.length > 0 && <ShelfList heading="Tags" id="tags" shelves={front.tags} />}
      {front.authors.length > 0 && <ShelfList heading="Authors" id="authors" shelves={front.authors} />}
    </nav>
  );
}

function ShelfList({
  heading,
  id,
  shelves,
}: {
  heading: string;
  id: string;
  shelves: readonly ShelfLink[];
}): JSX.Element {
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{heading}</h2>
      <ul>
        {shelves.map((shelf) => (
          <li key={shelf.slug}>
            <a href={shelf.address}>{shelf.name}</a> <span class="number quiet">{shelf.count}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
