#!/usr/bin/env node
import module from "node:module";

// From Node 22.8 on, what was compiled once is kept for the next call.
module.enableCompileCache?.();
await import("../dist/bin.js");
