export { type RunningServer, type ServeOptions, servePage } from "./page-server.ts";
