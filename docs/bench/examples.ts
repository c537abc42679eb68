import band from "../../shared/recipes/band.recipe.yaml?raw";
import faulty from "../../shared/recipes/faulty-runner.recipe.yaml?raw";
import napkin from "../../shared/recipes/napkin.recipe.yaml?raw";
import runner from "../../shared/recipes/runner.recipe.yaml?raw";
import seasons from "../../shared/recipes/seasons.recipe.yaml?raw";

/** The recipes of the winter course, to begin with. */
export const examples: readonly { readonly title: string; readonly text: string }[] = [
  { title: "the runner: moths and lanterns", text: runner },
  { title: "the napkin: ferns", text: napkin },
  { title: "the band: ears of barley", text: band },
  { title: "the seasons: four designs on one warp", text: seasons },
  { title: "the runner with slips in it", text: faulty },
];
