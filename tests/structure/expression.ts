// Every regular expression of a source file, as the parser of the test runner finds them.
import { parseAst } from "vitest/node";
import type { SourceFile } from "./source.ts";

export interface Expression {
  readonly path: string;
  readonly line: number;
  readonly source: string;
  readonly flags: string;
}

interface Tree {
  readonly type?: string;
  readonly [key: string]: unknown;
}

/**
 * Returns the regular expressions of a file, written out or made by `new RegExp`. A name in one of the latter is what a
 * constant of the file says, else `x`.
 */
export function listExpressions({ path, text }: SourceFile): readonly Expression[] {
  const lang = /\.m?js$/.test(path) ? "js" : path.endsWith("x") ? "tsx" : "ts";
  const constants = new Map<string, Tree>();
  const found: Expression[] = [];
  const visit = (node: unknown): void => {
    if (typeof node !== "object" || node === null) return;
    const tree = node as Tree;
    if (tree.type === "VariableDeclarator") constants.set(nameOf(tree["id"]), tree["init"] as Tree);
    const line = text.slice(0, Number(tree["start"])).split("\n").length;
    const regex = tree["regex"] as { pattern: string; flags: string } | undefined;
    if (regex) found.push({ path, line, source: regex.pattern, flags: regex.flags });
    if (tree.type === "NewExpression" && nameOf(tree["callee"]) === "RegExp") {
      const [pattern, flags] = tree["arguments"] as readonly Tree[];
      found.push({
        path,
        line,
        source: spell(pattern, constants),
        flags: flags ? spell(flags, constants) : "",
      });
    }
    Object.values(tree).forEach(visit);
  };
  visit(parseAst(text, { lang }));
  return found;
}

function nameOf(node: unknown): string {
  return String((node as Tree | null)?.["name"] ?? "");
}

/** What a piece of code says in a pattern. */
function spell(node: Tree | undefined, constants: ReadonlyMap<string, Tree>): string {
  if (node === undefined || node === null) return "x";
  const regex = node["regex"] as { pattern: string } | undefined;
  if (regex) return regex.pattern;
  if (node.type === "Literal") return String(node["value"]);
  if (node.type === "TaggedTemplateExpression") return rawOf(node["quasi"] as Tree);
  if (node.type === "Identifier") return spell(constants.get(nameOf(node)), constants);
  if (node.type !== "TemplateLiteral") return "x";
  const between = (node["expressions"] as readonly Tree[]).map((one) => spell(one, constants));
  return (node["quasis"] as readonly Tree[])
    .map((quasi, index) => (quasi["value"] as { cooked: string }).cooked + (between[index] ?? ""))
    .join("");
}

/** What stands in a template that is tagged `String.raw` and has no names in it. */
function rawOf(template: Tree): string {
  return (template["quasis"] as readonly Tree[])
    .map((quasi) => (quasi["value"] as { raw: string }).raw)
    .join("x");
}
