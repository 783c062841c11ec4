// The workflows of the guide, read as their hosts read them: a contribution is looked at without a secret, with a token that
// only reads, by the program of the main branch, and nothing that was contributed is run.
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { blocks, listCalls, textOf } from "./block.ts";

interface Step {
  readonly uses?: string;
  readonly run?: string;
  readonly with?: Readonly<Record<string, string | number | boolean>>;
  readonly env?: Readonly<Record<string, string>>;
  readonly "working-directory"?: string;
}
interface Workflow {
  readonly on: unknown;
  readonly permissions: Readonly<Record<string, string>>;
  readonly jobs: Readonly<
    Record<
      string,
      {
        readonly steps: readonly Step[];
        readonly permissions?: unknown;
        readonly needs?: string;
        readonly strategy?: {
          readonly "fail-fast": boolean;
          readonly matrix: { readonly slice: readonly number[] };
        };
      }
    >
  >;
}
interface Job {
  readonly script: readonly string[];
  readonly rules: readonly { readonly if: string }[];
  readonly cache?: { readonly paths: readonly string[] };
  readonly artifacts: { readonly paths: readonly string[]; readonly when?: string };
}

const read = (name: string): Workflow => parse(textOf(`yaml .github/workflows/${name}.yml`));
const stepsOf = ({ jobs }: Workflow): readonly Step[] => Object.values(jobs).flatMap(({ steps }) => steps);
const [review, publish, slices] = [read("review"), read("publish"), read("slices")];

// biome-ignore lint/suspicious/noTemplateCurlyInString: as the host writes it
const mainBranch = "${{ github.event.repository.default_branch }}";

/** Commands that run nothing of the folder they are called in: the shell's own words, and the program. */
const known =
  /^(?:npm ci --ignore-scripts|(?:GITHUB_WORKSPACE="\$GITHUB_WORKSPACE\/contributed" )?npx counterchange |cp -rL |git diff |git clone --depth 1 |cd \.\.\/main$)/;

describe("on GitHub Actions", () => {
  test("a contribution is looked at without a secret, and with a token that only reads", () => {
    expect(review.on).toBe("pull_request");
    expect(review.permissions).toEqual({ contents: "read" });
    expect(textOf("yaml .github/workflows/review.yml")).not.toMatch(
      /secrets|GITHUB_TOKEN|pull_request_target/,
    );
    expect(Object.values(review.jobs).map(({ permissions }) => permissions)).toEqual([undefined]);
  });

  test("all that runs runs in the main branch; the contribution lies beside it", () => {
    const steps = stepsOf(review);
    const checkouts = steps
      .filter(({ uses }) => uses?.startsWith("actions/checkout@"))
      .map((step) => step.with);
    expect(checkouts).toEqual([
      { ref: mainBranch, path: "main", "persist-credentials": false },
      { path: "contributed", "persist-credentials": false },
    ]);
    const runs = steps.filter(({ run }) => run !== undefined);
    expect(runs.length).toBeGreaterThan(3);
    expect(runs.filter((step) => step["working-directory"] !== "main")).toEqual([]);
    // What somebody else wrote stands in no line that a shell reads.
    expect(runs.filter(({ run }) => run?.includes("${{"))).toEqual([]);
  });

  test("publishing has what the host of pages asks, and its secret is seen by one step", () => {
    expect(publish.on).toEqual({ push: { branches: ["main"] } });
    expect(publish.permissions).toEqual({ contents: "read", pages: "write", "id-token": "write" });
    const secret = stepsOf(publish).filter((step) => JSON.stringify(step).includes("secrets."));
    expect(secret.map(({ run }) => run?.startsWith("npx counterchange publish "))).toEqual([true]);
    const kept = stepsOf(publish).find(({ uses }) => uses?.startsWith("actions/cache@"))?.with;
    expect(kept?.path).toBe(".cache");
    expect(stepsOf(publish).indexOf(secret[0] as Step)).toBeGreaterThan(
      stepsOf(publish).findIndex(({ uses }) => uses?.startsWith("actions/cache@")),
    );
  });

  test("slices are all of a gallery, each with the secret; what they keep is merged, and published once", () => {
    const { slice, publish: last } = slices.jobs;
    expect(slices.permissions).toEqual({ contents: "read" });
    expect(last).toMatchObject({ needs: "slice", permissions: publish.permissions });
    const numbers = slice?.strategy?.matrix.slice ?? [];
    // One that is broken stops no other.
    expect(slice?.strategy?.["fail-fast"]).toBe(false);
    expect(numbers).toEqual(numbers.map((_, index) => index + 1));
    const find = (job: typeof slice, what: RegExp) =>
      job?.steps.find(({ uses = "", run = "" }) => what.test(`${uses}${run}`));
    const made = find(slice, /^npx counterchange slice/);
    expect(made?.run).toBe(`npx counterchange slice "$SLICE/${numbers.length}" --cache kept || [ $? -eq 1 ]`);
    const published = find(last, /^npx counterchange publish/);
    expect(published?.run).toBe("npx counterchange publish --cache merged || [ $? -eq 1 ]");
    // biome-ignore lint/suspicious/noTemplateCurlyInString: as the host writes it
    const secret = "${{ secrets.COUNTERCHANGE_KEY }}";
    expect([made?.env?.["COUNTERCHANGE_KEY"], published?.env?.["COUNTERCHANGE_KEY"]]).toEqual([
      secret,
      secret,
    ]);
    expect(stepsOf(slices).filter((step) => JSON.stringify(step).includes("secrets."))).toHaveLength(2);
    expect(find(slice, /upload-artifact/)?.with?.["path"]).toBe("kept");
    expect(find(last, /download-artifact/)?.with).toEqual({
      pattern: "kept-*",
      path: "merged",
      "merge-multiple": true,
    });
  });

  test.each([review, publish, slices].flatMap(stepsOf))("$uses $run", ({ uses, run }) => {
    if (uses !== undefined) expect(uses).toMatch(/^actions\/[a-z-]+@[0-9a-f]{40}$/);
    else expect(run).toMatch(known);
  });

  test("one action has one version in all files, named beside it", () => {
    const pinned = blocks
      .flatMap(({ text }) => [...text.matchAll(/uses: (\S+)@([0-9a-f]{40}) # (v\d+\.\d+\.\d+)$/gm)])
      .map(([, action = "", commit, version]) => [action, `${commit} ${version}`] as const);
    expect(new Set(pinned.map(([action]) => action)).size).toBe(
      new Set(pinned.map((one) => one.join(" "))).size,
    );
    expect(pinned).toHaveLength([review, publish, slices].flatMap(stepsOf).filter(({ uses }) => uses).length);
  });
});

describe("on GitLab", () => {
  const jobs: Readonly<Record<string, Job>> = Object.assign(
    {},
    ...blocks.filter(({ info }) => info === "yaml .gitlab-ci.yml").map(({ text }) => parse(text)),
  );

  test("a contribution is looked at by the program of the project that it would be merged into", () => {
    const { script, rules, cache, artifacts } = jobs.review as Job;
    expect(rules).toEqual([{ if: '$CI_PIPELINE_SOURCE == "merge_request_event"' }]);
    expect(script.slice(0, 2)).toEqual([
      'git clone --depth 1 --branch "$CI_MERGE_REQUEST_TARGET_BRANCH_NAME" "$CI_MERGE_REQUEST_PROJECT_URL" ../main',
      "cd ../main",
    ]);
    expect(cache).toBeUndefined();
    expect(artifacts).toMatchObject({ when: "always", paths: ["reply.md"] });
  });

  test("the main branch alone is published, with what was measured kept", () => {
    const { script, rules, cache, artifacts } = jobs.pages as Job;
    expect(rules.map((rule) => rule.if)).toEqual([
      '$CI_PIPELINE_SOURCE == "push" && $CI_COMMIT_BRANCH == $CI_DEFAULT_BRANCH',
    ]);
    expect(cache?.paths).toEqual([".cache"]);
    expect(script.at(-1)).toBe(`cp -rL published ${artifacts.paths[0]}`);
  });

  test.each(Object.values(jobs).flatMap(({ script }) => script))("%s", (line) => {
    expect(line).toMatch(known);
  });
});

test("the program is called as it is installed, and every folder it writes is the one that is shown", () => {
  const workflows = blocks.filter(({ info }) => info.startsWith("yaml ."));
  expect(workflows).toHaveLength(5);
  const calls = workflows.flatMap(({ text }) => listCalls(text));
  expect(calls.map(([name]) => name).sort()).toEqual([
    ..."check check check".split(" "),
    ...Array(5).fill("publish"),
    "slice",
  ]);
  const { dependencies } = JSON.parse(textOf("json package.json"));
  expect(dependencies).toEqual({ counterchange: "file:counterchange-0.1.0.tgz" });
});
