import { FileError, type Recipe, soundRecipe } from "../../src/index.js";

/** What a recipe says, without where it says it; undefined when it cannot be read. */
export function meaning(text: string | Uint8Array): Omit<Recipe, "text"> | undefined {
  try {
    const recipe = soundRecipe(text, "recipe");
    const { text: _text, yarns, stated, cloth, ...rest } = recipe;
    const placeless = <T extends { line: number; column: number }>(value: T) => ({
      ...value,
      line: 0,
      column: 0,
    });
    return {
      ...rest,
      // How rows and stripes are put together is the text's, what they are is the recipe's.
      pieces: rest.pieces.map(
        ({ order: _order, blocks: _blocks, over: _over, yarnOrders: _orders, ...piece }) => ({
          ...piece,
          over: 0,
          yarnOrders: [],
        }),
      ),
      yarns: yarns.map((yarn) => ({ ...yarn, ...(yarn.count && { count: placeless(yarn.count) }) })),
      stated: stated.map(placeless),
      cloth: {
        ...cloth,
        ...(cloth.reed === undefined ? {} : { reed: placeless(cloth.reed) }),
        ...(cloth.sley === undefined ? {} : { sley: placeless(cloth.sley) }),
      },
    };
  } catch (error) {
    if (error instanceof FileError) return undefined;
    throw error;
  }
}
