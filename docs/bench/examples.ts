import runner from "../../shared/recipes/runner.recipe.yaml?raw";

/** The recipes of the winter course, to begin with; all but the first are fetched when they are asked for. */
export const examples: readonly { readonly title: string; text(): Promise<string> }[] = [
  {
    title: "the runner: moths and lanterns",
    text: async () => runner,
  },
  {
    title: "the napkin: ferns",
    text: async () => (await import("../../shared/recipes/napkin.recipe.yaml?raw")).default,
  },
  {
    title: "the band: ears of barley",
    text: async () => (await import("../../shared/recipes/band.recipe.yaml?raw")).default,
  },
  {
    title: "the seasons: four designs on one warp",
    text: async () => (await import("../../shared/recipes/seasons.recipe.yaml?raw")).default,
  },
  {
    title: "the runner with slips in it",
    text: async () => (await import("../../shared/recipes/faulty-runner.recipe.yaml?raw")).default,
  },
];
