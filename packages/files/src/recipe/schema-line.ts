/** Where the schema for editors is, seen from a folder with the command installed in it. */
const INSTALLED = "node_modules/drawcord/recipe.schema.json";

/**
 * The comment by which an editor that knows YAML schemas finds that of recipes.
 * @param schema the path or address of the schema
 */
export function schemaLine(schema = INSTALLED): string {
  return `# yaml-language-server: $schema=${schema}`;
}
