/** Whether the reference is part of the site: it takes half as long again to make, so that tests leave it out. */
export const isWhole = !process.argv.includes("--bare");
