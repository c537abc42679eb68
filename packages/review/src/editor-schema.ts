import { recipeSchema, type Schema } from "@drawcord/files";
import { levelNames } from "./rule-names.js";

/**
 * The schema of recipes as editors want it: with the names of the rules, so that they can be completed. A recipe is read by
 * the schema without them, which need not know the rules.
 * @example editorSchema().title // "Drawcord recipe"
 */
export function editorSchema(): Schema {
  const names = { enum: levelNames };
  return within(recipeSchema, {
    limits: (limits) => within(limits, { levels: (levels) => ({ ...levels, propertyNames: names }) }),
    waive: (waive) => ({
      ...waive,
      ...(waive.items && { items: within(waive.items, { rule: (rule) => ({ ...rule, ...names }) }) }),
    }),
  });
}

/** A schema with some of its properties changed. */
function within(
  { properties = {}, ...schema }: Schema,
  changes: Readonly<Record<string, (of: Schema) => Schema>>,
): Schema {
  const changed = Object.entries(properties).map(([key, of]) => [key, changes[key]?.(of) ?? of]);
  return { ...schema, properties: Object.fromEntries(changed) };
}
