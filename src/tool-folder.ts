/** Where the tool's own folders lie. Compiled, its code lies elsewhere than its layouts and is told where they are. */
import { fileURLToPath } from "node:url";

/** Set when the tool is compiled: the package's folder as a URL. */
declare const TOOL_HOME: string | undefined;

const home = typeof TOOL_HOME === "string" ? TOOL_HOME : new URL("..", import.meta.url).href;

/** The absolute path of a folder of the package, such as `layouts`. */
export const toolFolder = (folder: string): string => fileURLToPath(new URL(folder, home));
