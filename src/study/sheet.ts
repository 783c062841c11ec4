// Floor 5. Which options a contact sheet shows: the best, with those that do equally well behind one drawing.
import type { RankedOption } from "../measure/rank.ts";
import type { ReportedOption } from "./options.ts";
import type { SheetGroup } from "./ranking.ts";

/** Most drawings on a sheet (our own judgement: a sheet is taken in at a glance). */
const mostDrawings = 8;

/**
 * Groups ranked options that share a place and a paint. The head of a group is the one that departs least; groups whose
 * head was not drawn are left out.
 */
export function pickSheet(options: readonly ReportedOption[]): readonly SheetGroup[] {
  const groups = new Map<string, ReportedOption[]>();
  for (const option of options) {
    const key = `${option.place} ${option.id}`;
    groups.set(key, [...(groups.get(key) ?? []), option]);
  }
  const sheet: SheetGroup[] = [];
  for (const [first, ...others] of groups.values()) {
    if (first?.drawing === undefined || sheet.length === mostDrawings) continue;
    sheet.push({ head: { ...first, drawing: first.drawing }, others: others.map(withoutDrawing) });
  }
  return sheet;
}

/** A ranked option without its drawing, which is long. */
export function withoutDrawing({ drawing: _drawing, ...option }: ReportedOption): RankedOption {
  return option;
}
